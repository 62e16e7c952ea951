//! Puts the page together: one HTML file with everything in it.
//!
//! `put_together CODE.wasm OUT.html [fast]`: from the desk as WebAssembly to the page, with a list of
//! how many bytes each part takes. The code is deflated (RFC 1951) by zopfli, which takes a
//! minute; `fast` is for tests. The page's policy names its own script and style by their SHA-256.

use std::collections::BTreeMap;
use std::io::Write;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};
use spinney_desk::{Desk, Reply, Request};

const PAGE: &str = include_str!("../page/page.html");
const SCRIPT: &str = include_str!("../page/page.js");
const WORKER: [&str; 2] = [include_str!("../page/kept.js"), include_str!("../page/worker.js")];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let [code, out, how @ ..] = given.as_slice() else {
        return Err("use: put_together CODE.wasm OUT.html [fast]".into());
    };
    let code = std::fs::read(code)?;
    let packed = packed(&code, how.iter().any(|word| word == "fast"))?;
    let look = asset("look.css");
    let look = String::from_utf8(look)?;
    // Its typefaces come from the desk's own code, and not by an address.
    let faces = look.lines().filter(|line| !line.starts_with("@font-face"));
    let look: String = faces.flat_map(|line| [line, "\n"]).collect();
    let script =
        ["(() => {\n\"use strict\";\n", &spinney_pocket::hands(), SCRIPT, "})();\n"].concat();
    let worker = [format!("const SIGNS = \"{SIGNS}\";\n"), WORKER.concat()].concat();
    for text in [&look, &script, &worker] {
        // Nothing in them may end the element that they stand in.
        assert!(!text.contains("</"), "a part of the page would end its element");
    }
    let icon = STANDARD.encode(asset("icon.svg"));
    let parts = BTreeMap::from([
        ("SCRIPT", named(&script)),
        ("STYLE", named(&look)),
        ("ICON", format!("data:image/svg+xml;base64,{icon}")),
        ("LOOK", look),
        ("CODE", pieces(&packed)),
        ("MOST", spinney_model::limits::FORM_BYTES.to_string()),
        ("WORKER", worker),
        ("SCRIPT_TEXT", script),
    ]);
    let page = filled(PAGE, &parts);
    std::fs::write(out, &page)?;
    println!("{:>9}  the page", page.len());
    println!("{:>9}  the desk's code, as it is", code.len());
    println!("{:>9}  the desk's code, deflated", packed.len());
    for (name, part) in &parts {
        println!("{:>9}  {}", part.len(), name.to_lowercase());
    }
    Ok(())
}

/// Bytes of code in a piece of the page: small enough that unpacking begins early.
const PIECE: usize = 4 * (1 << 16);

/// The code in pieces, each decoded by itself.
fn pieces(packed: &[u8]) -> String {
    let piece = |bytes: &[u8]| {
        format!("<script type=\"text/plain\" class=\"code\">{}</script>\n", signs(bytes))
    };
    packed.chunks(PIECE).map(piece).collect()
}

/// What bytes are written with: what ASCII shows, without what HTML or a script could take for
/// something else.
const SIGNS: &str =
    "!#%()*+,-./0123456789:;=?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[]^_abcdefghijklmnopqrstuvwxyz{|}";

/// Four bytes in five signs, of which the first counts most, as RFC 1924 and the Ascii85 of PDF
/// (ISO 32000-1, 7.4.3) do; of the last group, one sign more than it has bytes. A sixteenth shorter than base64.
fn signs(bytes: &[u8]) -> String {
    let signs = SIGNS.as_bytes();
    assert_eq!(signs.len(), 85);
    let group = |bytes: &[u8]| {
        let mut four = [0; 4];
        four[..bytes.len()].copy_from_slice(bytes);
        let word = u32::from_be_bytes(four);
        let sign = |place| char::from(signs[(word / 85_u32.pow(place) % 85) as usize]);
        (0..5).rev().map(sign).take(bytes.len() + 1).collect::<String>()
    };
    bytes.chunks(4).map(group).collect()
}

/// A part of the screens' looks, from the desk itself.
fn asset(name: &str) -> Vec<u8> {
    match Desk::default().handle(&Request::get(&format!("/assets/{name}"))) {
        Reply::Page(page) if page.status == 200 => page.body,
        other => panic!("the desk has no {name}: {other:?}"),
    }
}

/// The name of an inline text in a Content Security Policy.
fn named(text: &str) -> String {
    STANDARD.encode(Sha256::digest(text))
}

/// The page with its parts in their places; no part is looked into.
fn filled(page: &str, parts: &BTreeMap<&str, String>) -> String {
    let mut pieces = page.split('{');
    let mut out = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let (name, rest) = piece.split_once('}').expect("a place ends");
        out.push_str(&parts[name]);
        out.push_str(rest);
    }
    out
}

fn packed(code: &[u8], fast: bool) -> std::io::Result<Vec<u8>> {
    if fast {
        let mut deflate =
            flate2::write::DeflateEncoder::new(Vec::new(), flate2::Compression::best());
        deflate.write_all(code)?;
        return deflate.finish();
    }
    let mut out = Vec::new();
    zopfli::compress(zopfli::Options::default(), zopfli::Format::Deflate, code, &mut out)?;
    Ok(out)
}
