//! What a listener hears: the tags, in reading order, and the list of contents.
//!
//! From roles and groups to PDF structure types. Decoration, running heads and stamps are
//! artifacts, which a screen reader passes over.

use std::num::NonZeroU16;

use krilla::destination::XyzDestination;
use krilla::geom::Point;
use krilla::outline::{Outline, OutlineNode};
use krilla::surface::Surface;
use krilla::tagging::{
    Artifact, ArtifactType, ContentTag, ListNumbering, Node as Tagged, SpanTag,
    TableHeaderScope, Tag, TagGroup, TagKind,
};

use super::{Fonts, PT, pen};
use crate::sheet::{Group, Node, Placed, Rect, Role, What};

/// Draws nodes in order and returns their tags.
pub(super) fn draw(surface: &mut Surface, nodes: &[Node], fonts: &Fonts) -> Vec<Tagged> {
    seen_through(surface, nodes, fonts, None)
}

fn seen_through(
    surface: &mut Surface,
    nodes: &[Node],
    fonts: &Fonts,
    window: Option<Rect>,
) -> Vec<Tagged> {
    let mut tags = Vec::new();
    for node in nodes {
        match node {
            Node::Placed(placed) => {
                if placed.turned {
                    pen::on_its_head(surface, placed.rect);
                }
                // Words that a window cuts are shapes: no reader finds them beyond its edge.
                let cut = window.filter(|window| !placed.rect.lies_in(window));
                tags.extend(one(surface, placed, fonts, cut));
                if placed.turned {
                    surface.pop();
                }
            }
            Node::Group(group, inner) => {
                let children = seen_through(surface, inner, fonts, window);
                if !children.is_empty() {
                    let tag = container(*group);
                    tags.push(TagGroup::with_children(tag, children).into());
                }
            }
            Node::Window(rect, inner) => {
                let open = pen::window(surface, *rect);
                tags.extend(seen_through(surface, inner, fonts, Some(*rect)));
                if open {
                    surface.pop();
                }
            }
        }
    }
    tags
}

fn one(
    surface: &mut Surface,
    placed: &Placed,
    fonts: &Fonts,
    cut: Option<Rect>,
) -> Option<Tagged> {
    let Some(tag) = meaning(placed) else {
        let kind = match placed.role {
            Role::Running => ArtifactType::PaginationOther,
            Role::Stamp => ArtifactType::Watermark,
            _ => ArtifactType::Layout,
        };
        surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(kind)));
        match &placed.what {
            What::Text(block) => {
                for line in &block.lines {
                    match (cut, &placed.role) {
                        (Some(seen), _) => {
                            pen::cut_line(surface, line, placed.rect, fonts, seen)
                        }
                        (None, Role::Stamp) => {
                            pen::shapes(surface, line, placed.rect, fonts, placed.rect);
                        }
                        (None, _) => pen::line(surface, line, placed.rect, fonts),
                    }
                }
            }
            What::Path(path) => pen::path(surface, path, placed.rect),
            What::Picture(pixels) => pen::picture(surface, pixels, placed.rect),
        }
        surface.end_tagged();
        return None;
    };
    let mut group = TagGroup::new(tag);
    match &placed.what {
        What::Text(block) => {
            for line in &block.lines {
                group.push(surface.start_tagged(ContentTag::Span(SpanTag::empty())));
                match cut {
                    Some(seen) => pen::cut_line(surface, line, placed.rect, fonts, seen),
                    None => pen::line(surface, line, placed.rect, fonts),
                }
                surface.end_tagged();
            }
        }
        What::Path(path) => {
            group.push(surface.start_tagged(ContentTag::Other));
            pen::path(surface, path, placed.rect);
            surface.end_tagged();
        }
        What::Picture(pixels) => {
            group.push(surface.start_tagged(ContentTag::Other));
            pen::picture(surface, pixels, placed.rect);
            surface.end_tagged();
        }
    }
    (!group.children.is_empty()).then(|| group.into())
}

/// The tag of one thing; None: a listener is spared it.
fn meaning(placed: &Placed) -> Option<TagKind> {
    match &placed.role {
        Role::Heading(level) => {
            let level = NonZeroU16::new(u16::from(*level).max(1))?;
            Some(Tag::Hn(level, Some(words(placed))).into())
        }
        Role::Paragraph | Role::Caption => Some(Tag::P.into()),
        Role::Second(tag) => Some(Tag::P.with_lang(Some((*tag).to_owned())).into()),
        Role::Label => Some(Tag::Lbl.into()),
        Role::Figure(alt) => Some(Tag::Figure(Some(alt.clone())).into()),
        Role::Decoration | Role::Running | Role::Stamp => None,
    }
}

fn words(placed: &Placed) -> String {
    match &placed.what {
        What::Text(block) => block.words().trim().to_owned(),
        _ => String::new(),
    }
}

fn container(group: Group) -> TagKind {
    match group {
        Group::Section => Tag::Section.into(),
        Group::List => Tag::L(ListNumbering::None).into(),
        Group::Item => Tag::LI.into(),
        Group::Body => Tag::LBody.into(),
        Group::Table => Tag::Table.into(),
        Group::Row => Tag::TR.into(),
        Group::ColumnHead => Tag::TH(TableHeaderScope::Column).into(),
        Group::RowHead => Tag::TH(TableHeaderScope::Row).into(),
        Group::Cell => Tag::TD.into(),
    }
}

/// The list of contents that a reader of the file sees: headings of the first two levels.
#[derive(Default)]
pub(super) struct Contents {
    entries: Vec<(u8, String, usize, f64, f64)>,
}

impl Contents {
    /// Gathers the headings of a page.
    pub(super) fn gather(&mut self, nodes: &[Node], page: usize) {
        for node in nodes {
            match node {
                Node::Group(_, inner) | Node::Window(_, inner) => self.gather(inner, page),
                Node::Placed(placed) => {
                    if let Role::Heading(level @ 1..=2) = placed.role {
                        let (x, y) = (placed.rect.x, placed.rect.y);
                        self.entries.push((level, words(placed), page, x, y));
                    }
                }
            }
        }
    }

    /// The list, second levels under their firsts.
    pub(super) fn outline(self) -> Outline {
        let mut outline = Outline::new();
        let mut open: Option<OutlineNode> = None;
        for (level, title, page, x, y) in self.entries {
            let point = Point::from_xy((x * PT) as f32, (y * PT) as f32);
            let node = OutlineNode::new(title, XyzDestination::new(page, point));
            match (level, open.as_mut()) {
                (2, Some(first)) => first.push_child(node),
                _ => {
                    if let Some(done) = open.replace(node) {
                        outline.push_child(done);
                    }
                }
            }
        }
        if let Some(done) = open {
            outline.push_child(done);
        }
        outline
    }
}
