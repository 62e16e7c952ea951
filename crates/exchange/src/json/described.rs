//! For tests: JSON Schemas of what we write, made from the private types of our JSON.
//!
//! From those types, with what their docs say and the words that their texts may be, to the files
//! `docs/*.schema.json`, which must be just that. Who changes a type writes them anew with
//! `WRITE_SCHEMAS=1 cargo test --workspace --lib described`.
//!
//! JSON Schema 2020-12, of what is written: a field that is always written is required, and there
//! are no others.

use std::borrow::Cow;
use std::path::Path;

use schemars::generate::SchemaSettings;
use schemars::transform::{Transform, transform_subschemas};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde_json::{Value, json};
use spinney_model::{self as model, SeenOn, Severity, TaxonIx};

use super::{forgive, measured, revise, shape, spread, weak, wish_words, write};
use crate::measured::words;

/// A text that is one of these words.
fn one_of(words: impl IntoIterator<Item = &'static str>) -> Schema {
    let words: Vec<Value> = words.into_iter().map(Value::from).collect();
    json_schema!({ "enum": words })
}

/// A text that looks like this.
fn text(pattern: &str) -> Schema {
    json_schema!({ "type": "string", "pattern": pattern })
}

/// Texts of our JSON that are not just any text.
macro_rules! texts {
    ($($(#[doc = $doc:literal])* $name:ident = $rule:expr;)*) => {$(
        $(#[doc = $doc])*
        pub(super) enum $name {}

        impl JsonSchema for $name {
            fn schema_name() -> Cow<'static, str> {
                stringify!($name).into()
            }

            fn inline_schema() -> bool {
                true
            }

            fn json_schema(_: &mut SchemaGenerator) -> Schema {
                $rule
            }
        }
    )*};
}

texts! {
    /// An exact fraction: 34, 10/3.
    Exact = text("^-?[0-9]+(/[0-9]+)?$");
    /// The code of a finding.
    Code = text("^[a-z]+(-[a-z]+)*$");
    /// How much a finding matters.
    Weight = one_of(
        [Severity::MendThis, Severity::WorthALook, Severity::GoodToKnow].map(Severity::words),
    );
    /// A unit in which values are kept.
    Unit = {
        use model::Unit::{Degrees, Grams, Millimetres, Unstated};
        one_of([Millimetres, Degrees, Grams, Unstated].map(model::Unit::sign))
    };
    /// Why a search ended.
    Stopped = {
        use model::Stopped::{Budget, Memory, Overflow};
        one_of([Budget, Memory, Overflow].map(|why| write::stopped(Some(why)).expect("a word")))
    };
    /// An aim.
    Aim = one_of(wish_words::GOALS.map(|(_, word)| word));
    /// What is in the hand.
    Hand = one_of(SeenOn::ALL.map(SeenOn::word));
    /// A season.
    When = one_of(model::Season::ALL.map(model::Season::word));
    /// Which wish it is.
    About = one_of(["kept", "hand", "never", "touch", "order", "early", "goals"]);
    /// Why a wish was refused.
    WhyNot = {
        use model::WhyNot as Why;
        let all = [
            Why::Blocked(TaxonIx(0)),
            Why::AllAlike,
            Why::NoSuchState,
            Why::AfterRefused,
            Why::LeftOut,
            Why::NeverParted,
            Why::TooLarge,
        ];
        one_of(all.map(wish_words::of_why))
    };
    /// What might part two kinds that are alike.
    Hope = {
        use model::Hope::{NewDifference, OneBlank, SeveralBlanks};
        one_of([OneBlank, SeveralBlanks, NewDifference].map(weak::word))
    };
    /// Whether a kind was measured often enough.
    TrustWord = {
        use model::Trust::{Enough, More, Never, TooMany};
        one_of([Enough, More(1), TooMany, Never].map(spread::word))
    };
    /// What is measured.
    Measurand = one_of(model::Measurand::ALL.map(words::measurand));
    /// What a measure is in.
    MeasuredIn = {
        use model::MeasuredIn::{Millimetres, Ratio, SquareMillimetres};
        one_of([Millimetres, SquareMillimetres, Ratio].map(model::MeasuredIn::sign))
    };
    /// How a measure is taken.
    How = {
        let all: std::collections::BTreeSet<_> =
            model::Measurand::ALL.map(|what| words::how(what.how())).into();
        one_of(all)
    };
    /// Why a measure is not there.
    NotMeasured = {
        use model::NotMeasured::{NoScale, NoStalk};
        one_of([NoScale, NoStalk].map(words::not_measured))
    };
    /// What is to be said of a leaf.
    LeafNote = {
        use model::LeafNote as Note;
        let all = [Note::BaseGuessed, Note::Holes, Note::FaintEdge, Note::TwoStalks];
        let more = [Note::CutApart, Note::Mended, Note::Rubbed];
        one_of(all.into_iter().chain(more).map(words::note))
    };
    /// How parts of a leaf are arranged.
    Arrangement = {
        use model::Arrangement::{Feather, Hand};
        one_of([Feather, Hand].map(words::arrangement))
    };
    /// How the side veins of both sides stand to each other.
    VeinPairs = one_of(model::VeinPairs::ALL.map(words::vein_pairs));
    /// Why no side veins are told.
    VeinsUnseen = {
        use model::VeinsUnseen::{Faint, NotLookedFor};
        one_of([Faint, NotLookedFor].map(words::veins_unseen))
    };
    /// How an edge is.
    EdgeKind = one_of(model::EdgeKind::ALL.map(words::edge_kind));
    /// Why an edge was not seen.
    EdgeUnseen = {
        use model::EdgeUnseen::{Rubbed, TooCoarse};
        one_of([TooCoarse, Rubbed].map(words::edge_unseen))
    };
    /// How a base is.
    BaseForm = one_of(model::BaseForm::ALL.map(words::base_form));
    /// Which of two sides has more.
    WhichSide = one_of(model::WhichSide::ALL.map(words::which_side));
    /// How a tip is.
    TipForm = one_of(model::TipForm::ALL.map(words::tip_form));
    /// What in a picture is no leaf.
    LeftOut = one_of(model::LeftOut::ALL.map(words::left_out));
    /// Where the size of a dot comes from, or why it is not known.
    Scale = {
        use model::{Doubt, NoScale, PictureScale as Scale};
        let dpi = 300.0;
        let too_large = NoScale::TooLarge { dpi, longer: 500.0 };
        let unknown = [NoScale::NotSaid, NoScale::Camera, too_large, NoScale::NotSquare, NoScale::Rings];
        let known = [
            Scale::Said { dpi },
            Scale::OfRuler { dpi },
            Scale::OfFile { dpi, doubt: None },
            Scale::OfFile { dpi, doubt: Some(Doubt::Usual) },
            Scale::OfCard { dpi, off: 0.1 },
            Scale::OfStrip { dpi, off: 0.1, unsure: 0.01 },
        ];
        one_of(known.into_iter().chain(unknown.map(Scale::Unknown)).map(words::scale))
    };
    /// An answer.
    YesOrNo = one_of(["yes", "no"]);
}

impl JsonSchema for shape::Line {
    fn schema_name() -> Cow<'static, str> {
        "Line".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description":
                "One heap: its kinds, as bits of a number to the base 16 (the first kind the lowest \
                 bit); after a bar what remains of them, rising; after another one how many parts \
                 every key takes from there at least; with several goals that add up, one number \
                 each, in their order.",
            "type": "string",
            "pattern": "^[0-9a-f]+\\|([0-9]+( [0-9]+)*)?\\|[0-9]+( [0-9]+)*$",
        })
    }
}

/// No field but those that are named, numbers up to the largest, and each text in one line.
#[derive(Clone)]
struct AsWeWrite;

impl Transform for AsWeWrite {
    fn transform(&mut self, schema: &mut Schema) {
        let always = schema.get("required").cloned().unwrap_or_else(|| json!([]));
        if let Some(Value::Object(fields)) = schema.get_mut("properties") {
            let left_out = fields.iter_mut().filter(|(name, _)| {
                !always.as_array().is_some_and(|always| always.contains(&json!(name)))
            });
            left_out.for_each(|(_, field)| never_null(field));
            schema.insert("additionalProperties".to_owned(), json!(false));
        }
        schema.remove("default");
        if schema.remove("format").is_some_and(|format| format == "uint32") {
            schema.insert("maximum".to_owned(), json!(u32::MAX));
        }
        if let Some(Value::String(doc)) = schema.get_mut("description") {
            *doc = doc.replace('\n', " ");
        }
        transform_subschemas(self, schema);
    }
}

/// What is left out where there is nothing is never written as null.
fn never_null(field: &mut Value) {
    let Some(field) = field.as_object_mut() else { return };
    if let Some(Value::Array(types)) = field.get_mut("type") {
        types.retain(|one| one != "null");
        if let [one] = types.as_slice() {
            let one = one.clone();
            field.insert("type".to_owned(), one);
        }
    }
    if let Some(Value::Array(words)) = field.get_mut("enum") {
        words.retain(|word| !word.is_null());
    }
    if let Some(Value::Array(either)) = field.get_mut("anyOf") {
        either.retain(|one| one["type"] != "null");
        if let [Value::Object(one)] = either.as_slice() {
            let one = one.clone();
            field.remove("anyOf");
            field.extend(one);
        }
    }
}

/// The schema of what a type is written as.
fn schema_of<Written: JsonSchema>(file: &str, title: &str) -> String {
    let settings = SchemaSettings::draft2020_12().for_serialize().with_transform(AsWeWrite);
    let mut schema = settings.into_generator().into_root_schema_for::<Written>();
    schema.insert("$id".to_owned(), json!(format!("https://spinney.invalid/{file}")));
    schema.insert("title".to_owned(), json!(title));
    serde_json::to_string_pretty(&schema).expect("a schema has a JSON form") + "\n"
}

#[test]
fn the_schemas_in_the_docs_are_what_the_types_give() {
    let docs = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs");
    for (file, title, made) in [
        (
            "key.schema.json",
            "A key, its cost and what was found",
            schema_of::<shape::Report> as fn(&str, &str) -> String,
        ),
        ("weak.schema.json", "Where a table is weak", schema_of::<weak::Shape>),
        ("spread.schema.json", "How finds spread", schema_of::<spread::Shape>),
        (
            "measure.schema.json",
            "What was measured of the leaves in pictures",
            schema_of::<measured::Shape>,
        ),
        ("forgive.schema.json", "Forgiving keys", schema_of::<forgive::Shape>),
        (
            "revise.schema.json",
            "Last season's key for this season's table",
            schema_of::<revise::Shape>,
        ),
    ] {
        let (path, made) = (docs.join(file), made(file, title));
        if std::env::var_os("WRITE_SCHEMAS").is_some() {
            std::fs::write(&path, &made).expect("docs can be written");
        }
        let there = std::fs::read_to_string(&path).expect("docs can be read");
        for (at, (is, was)) in made.lines().zip(there.lines()).enumerate() {
            assert_eq!(is, was, "docs/{file}, line {}", at + 1);
        }
        assert_eq!(made, there, "docs/{file}");
    }
}
