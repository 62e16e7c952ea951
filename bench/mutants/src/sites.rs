//! Where a line can be made wrong, and the code with a switch at some of these places.
//!
//! From a file of Rust to its sites, and to the same file in which the expression of each chosen
//! site reads `if switched(n) { wrong } else { right }`. It does not look into macros, patterns,
//! constants, attributes or tests.

use std::collections::BTreeMap;

use quote::ToTokens;
use syn::spanned::Spanned;
use syn::visit_mut::{self, VisitMut};
use syn::{BinOp, Expr, ExprBinary, Lit, Stmt, UnOp, parse_quote};

/// A place where one thing is made wrong.
#[derive(Clone, Debug)]
pub struct Site {
    /// The line in the file as it stands in the repository.
    pub line: usize,
    /// What stands there, and what the mutant puts in its place.
    pub change: String,
}

/// All sites of a file, in the order of reading.
pub fn sites(file: &syn::File) -> Vec<Site> {
    let mut walk = Walk { chosen: None, next: 0, found: Vec::new(), quiet: 0 };
    walk.visit_file_mut(&mut file.clone());
    walk.found
}

/// The file with switches: place in `sites` → number of the mutant.
pub fn switched(file: &syn::File, chosen: &BTreeMap<usize, usize>) -> syn::File {
    let mut file = file.clone();
    let mut walk = Walk { chosen: Some(chosen), next: 0, found: Vec::new(), quiet: 0 };
    walk.visit_file_mut(&mut file);
    file
}

struct Walk<'c> {
    /// None: only look.
    chosen: Option<&'c BTreeMap<usize, usize>>,
    next: usize,
    found: Vec<Site>,
    /// Above 0 inside something that is evaluated while compiling.
    quiet: usize,
}

impl Walk<'_> {
    /// Counts a site; the number of its mutant if it is chosen.
    fn site(&mut self, line: usize, was: &dyn ToTokens, is: &dyn ToTokens) -> Option<usize> {
        let short = |tokens: &dyn ToTokens| {
            let text = tokens.to_token_stream().to_string();
            let short: String = text.chars().take(90).collect();
            if short.len() < text.len() { format!("{short}…") } else { short }
        };
        let at = self.next;
        self.next += 1;
        match self.chosen {
            None => {
                self.found
                    .push(Site { line, change: format!("{} => {}", short(was), short(is)) });
                None
            }
            Some(chosen) => chosen.get(&at).copied(),
        }
    }
}

/// What an expression is turned into; None: it is no site.
fn wrong(expression: &Expr) -> Option<Expr> {
    match expression {
        Expr::Binary(binary) => {
            if holds_let(&binary.left) || holds_let(&binary.right) {
                return None;
            }
            let op: BinOp = match binary.op {
                BinOp::Lt(_) => parse_quote!(<=),
                BinOp::Le(_) => parse_quote!(<),
                BinOp::Gt(_) => parse_quote!(>=),
                BinOp::Ge(_) => parse_quote!(>),
                BinOp::Eq(_) => parse_quote!(!=),
                BinOp::Ne(_) => parse_quote!(==),
                BinOp::And(_) => parse_quote!(||),
                BinOp::Or(_) => parse_quote!(&&),
                BinOp::Add(_) => parse_quote!(-),
                BinOp::Sub(_) => parse_quote!(+),
                BinOp::Mul(_) => parse_quote!(+),
                _ => return None,
            };
            Some(Expr::Binary(ExprBinary { op, ..binary.clone() }))
        }
        Expr::Unary(unary) if matches!(unary.op, UnOp::Not(_)) => Some((*unary.expr).clone()),
        Expr::Lit(literal) => match &literal.lit {
            Lit::Bool(bool) => {
                let other = !bool.value;
                Some(parse_quote!(#other))
            }
            Lit::Int(int) => {
                let next = int.base10_parse::<u64>().ok()?.checked_add(1)?;
                let next = syn::LitInt::new(&format!("{next}{}", int.suffix()), int.span());
                Some(parse_quote!(#next))
            }
            _ => None,
        },
        Expr::MethodCall(call) => {
            let other = match call.method.to_string().as_str() {
                "min" => "max",
                "max" => "min",
                "min_by_key" => "max_by_key",
                "max_by_key" => "min_by_key",
                "any" => "all",
                "all" => "any",
                "first" => "last",
                "last" if call.args.is_empty() => "first",
                "is_some" => "is_none",
                "is_none" => "is_some",
                "starts_with" => "ends_with",
                "ends_with" => "starts_with",
                "insert" | "push" | "is_empty" | "contains" => "",
                _ => return None,
            };
            match other {
                "" => match call.method.to_string().as_str() {
                    "is_empty" | "contains" => Some(parse_quote!(!#call)),
                    _ => None,
                },
                other => {
                    let mut call = call.clone();
                    call.method = syn::Ident::new(other, call.method.span());
                    Some(Expr::MethodCall(call))
                }
            }
        }
        _ => None,
    }
}

/// Whether a condition binds something, so that it cannot be put into another expression.
fn holds_let(expression: &Expr) -> bool {
    match expression {
        Expr::Let(_) => true,
        Expr::Binary(binary) => holds_let(&binary.left) || holds_let(&binary.right),
        Expr::Paren(inside) => holds_let(&inside.expr),
        _ => false,
    }
}

fn is_test(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        let text = attribute.to_token_stream().to_string();
        text.contains("cfg (test)") || text.contains("test]") || text.contains("# [test")
    })
}

impl VisitMut for Walk<'_> {
    fn visit_expr_mut(&mut self, expression: &mut Expr) {
        let before = expression.clone();
        visit_mut::visit_expr_mut(self, expression);
        if self.quiet > 0 {
            return;
        }
        // What is shown and turned is what stands in the file; inner switches stay in the right one.
        if let Some(other) = wrong(&before) {
            let line = before.span().start().line;
            if let Some(number) = self.site(line, &before, &other) {
                let right = expression.clone();
                *expression =
                    parse_quote!((if ::spinney_switch::on(#number) { #other } else { #right }));
            }
        }
    }

    fn visit_stmt_mut(&mut self, statement: &mut Stmt) {
        let before = statement.clone();
        visit_mut::visit_stmt_mut(self, statement);
        if self.quiet > 0 {
            return;
        }
        // A call whose value nobody takes is left out.
        if let Stmt::Expr(Expr::MethodCall(_) | Expr::Call(_) | Expr::Assign(_), Some(_)) =
            &before
        {
            let line = before.span().start().line;
            let nothing: proc_macro2::TokenStream = "{}".parse().expect("braces");
            if let Some(number) = self.site(line, &before, &nothing) {
                let right = statement.clone();
                *statement = parse_quote!(if !::spinney_switch::on(#number) { #right });
            }
        }
    }

    fn visit_item_mut(&mut self, item: &mut syn::Item) {
        let still = match item {
            syn::Item::Const(_) | syn::Item::Static(_) | syn::Item::Macro(_) => true,
            syn::Item::Fn(function) => {
                function.sig.constness.is_some() || is_test(&function.attrs)
            }
            syn::Item::Mod(module) => is_test(&module.attrs),
            syn::Item::Enum(_) => true,
            _ => false,
        };
        self.quiet += usize::from(still);
        visit_mut::visit_item_mut(self, item);
        self.quiet -= usize::from(still);
    }

    fn visit_impl_item_mut(&mut self, item: &mut syn::ImplItem) {
        let still = match item {
            syn::ImplItem::Const(_) => true,
            syn::ImplItem::Fn(function) => function.sig.constness.is_some(),
            _ => false,
        };
        self.quiet += usize::from(still);
        visit_mut::visit_impl_item_mut(self, item);
        self.quiet -= usize::from(still);
    }

    fn visit_pat_mut(&mut self, _: &mut syn::Pat) {}
    fn visit_type_mut(&mut self, _: &mut syn::Type) {}
    fn visit_attribute_mut(&mut self, _: &mut syn::Attribute) {}
    fn visit_expr_const_mut(&mut self, _: &mut syn::ExprConst) {}
    fn visit_generic_argument_mut(&mut self, _: &mut syn::GenericArgument) {}
}
