//! For tests: whether our JSON has the shape of a schema of `docs`.
//!
//! From a schema and a value to the first place where they disagree. It knows the words of
//! JSON Schema 2020-12 that our schema uses, and refuses any other, so that nothing in the
//! schema is passed over.

use serde_json::Value;

/// Words that only describe.
const TALK: [&str; 6] = ["$schema", "$id", "$defs", "title", "description", "pattern"];

/// Where a value does not have the shape of the schema; None: nowhere.
pub(crate) fn disagrees(value: &Value, schema: &Value, root: &Value) -> Option<String> {
    let rules = schema.as_object().expect("every schema of ours is an object");
    rules.iter().find_map(|(word, rule)| broken(value, word, rule, schema, root))
}

fn broken(
    value: &Value,
    word: &str,
    rule: &Value,
    all: &Value,
    root: &Value,
) -> Option<String> {
    let list = || rule.as_array().expect("a list of schemas");
    let fits = |schema: &&Value| disagrees(value, schema, root).is_none();
    let says = |bad: bool| bad.then(|| format!("{word} {rule}: {value}"));
    match word {
        _ if TALK.contains(&word) => None,
        "$ref" => {
            let name = rule.as_str().and_then(|name| name.strip_prefix("#/$defs/"));
            disagrees(value, &root["$defs"][name.expect("a definition of ours")], root)
        }
        "type" => says(match rule {
            Value::Array(types) => !types.iter().any(|one| is(value, one.as_str().unwrap())),
            one => !is(value, one.as_str().expect("a type")),
        }),
        "enum" => says(!list().contains(value)),
        "minimum" => says(value.is_number() && value.as_f64() < rule.as_f64()),
        "maximum" => says(value.is_number() && value.as_f64() > rule.as_f64()),
        "minItems" => says(value.as_array().map(Vec::len) < rule.as_u64().map(|n| n as usize)),
        "maxItems" => says(value.as_array().map(Vec::len) > rule.as_u64().map(|n| n as usize)),
        "dependentRequired" => says(rule.as_object().unwrap().iter().any(|(field, with)| {
            let with = || with.as_array().unwrap().iter().map(|other| other.as_str().unwrap());
            value.get(field).is_some() && with().any(|other| value.get(other).is_none())
        })),
        "uniqueItems" => None,
        "required" => {
            says(list().iter().any(|field| value.get(field.as_str().unwrap()).is_none()))
        }
        "anyOf" => says(!list().iter().any(|schema| fits(&schema))),
        "oneOf" => says(list().iter().filter(fits).count() != 1),
        "properties" => rule.as_object().unwrap().iter().find_map(|(field, schema)| {
            let why = disagrees(value.get(field)?, schema, root)?;
            Some(format!("{field}: {why}"))
        }),
        "additionalProperties" => {
            says(value.as_object()?.keys().any(|field| all["properties"].get(field).is_none()))
        }
        "prefixItems" => {
            let pairs = value.as_array()?.iter().zip(list());
            pairs.into_iter().find_map(|(item, schema)| disagrees(item, schema, root))
        }
        "items" if *rule == Value::Bool(false) => {
            says(value.as_array()?.len() > all["prefixItems"].as_array()?.len())
        }
        "items" => value.as_array()?.iter().find_map(|item| disagrees(item, rule, root)),
        _ => Some(format!("a word this test does not know: {word}")),
    }
}

fn is(value: &Value, kind: &str) -> bool {
    match kind {
        "object" => value.is_object(),
        "array" => value.is_array(),
        "string" => value.is_string(),
        "boolean" => value.is_boolean(),
        "null" => value.is_null(),
        "number" => value.is_number(),
        "integer" => value.is_i64() || value.is_u64(),
        _ => false,
    }
}
