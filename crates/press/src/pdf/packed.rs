//! A finished file once more, smaller: what its pages are made of is packed, and so is what is
//! told about them.
//!
//! From a PDF file whose content alone is packed to one whose other objects (the tags above all,
//! which are half of a sheet full of short words) lie in packed streams too. No object changes.
//! A file that is laid out otherwise than ours is handed back as it is.
//!
//! Source: ISO 32000-1, 7.5.7 (object streams) and 7.5.8 (cross-reference streams), from memory.

use std::io::Write;

use flate2::Compression;
use flate2::write::ZlibEncoder;

/// The most objects of one packed stream: a reader unpacks all of it for one of them.
const MOST: usize = 500;
/// What a line of the table of objects takes, in bytes.
const LINE: usize = 20;

/// The same file, packed.
pub(super) fn packed(file: Vec<u8>) -> Vec<u8> {
    Objects::of(&file).map_or_else(|| file.clone(), |objects| objects.written())
}

/// The objects of a file.
struct Objects<'f> {
    /// What stands before the first of them.
    head: &'f [u8],
    /// By their numbers from 1 on.
    bodies: Vec<&'f [u8]>,
    /// Which of them begins the file, and the like; without the number of objects.
    trailer: Vec<u8>,
}

impl<'f> Objects<'f> {
    fn of(file: &'f [u8]) -> Option<Self> {
        let end = last(file, b"startxref")?;
        let table: usize =
            std::str::from_utf8(&file[end..]).ok()?.lines().nth(1)?.parse().ok()?;
        let lines = file.get(table..end)?.strip_prefix(b"xref\n0 ")?;
        let line = lines.iter().position(|byte| *byte == b'\n')?;
        let count: usize = std::str::from_utf8(&lines[..line]).ok()?.parse().ok()?;
        let (lines, trailer) = lines[line + 1..].split_at_checked(count * LINE)?;
        let starts = lines.chunks(LINE).skip(1).map(|line| {
            let used = line[17] == b'n';
            used.then(|| std::str::from_utf8(&line[..10]).ok()?.parse::<usize>().ok()).flatten()
        });
        let starts: Vec<usize> = starts.collect::<Option<_>>()?;
        let mut ends = starts.clone();
        ends.sort_unstable();
        ends.push(table);
        let body = |(start, number): (&usize, usize)| {
            let next = ends.partition_point(|other| other <= start);
            let whole = file.get(*start..*ends.get(next)?)?;
            let body = whole.strip_prefix(format!("{number} 0 obj\n").as_bytes())?;
            Some(body.trim_ascii_end().strip_suffix(b"endobj")?.trim_ascii_end())
        };
        let bodies = starts.iter().zip(1..).map(body).collect::<Option<_>>()?;
        let trailer = trailer.trim_ascii().strip_prefix(b"trailer")?.trim_ascii();
        let trailer = trailer.strip_prefix(b"<<")?.strip_suffix(b">>")?;
        let trailer = trailer.strip_prefix(format!("/Size {count}").as_bytes())?.to_vec();
        Some(Self { head: file.get(..*ends.first()?)?, bodies, trailer })
    }

    fn written(&self) -> Vec<u8> {
        let mut file = self.head.to_vec();
        let numbered = || (1..).zip(&self.bodies);
        let is_stream = |body: &[u8]| body.ends_with(b"endstream");
        // A line for each object: what kind it is, where it is, and the place in a packed stream.
        let mut lines = vec![(0_u8, 0_usize, u16::MAX as usize); self.bodies.len() + 1];
        for (number, body) in numbered().filter(|(_, body)| is_stream(body)) {
            lines[number] = (1, file.len(), 0);
            put(&mut file, number, body);
        }
        let small: Vec<(usize, &&[u8])> =
            numbered().filter(|(_, body)| !is_stream(body)).collect();
        for together in small.chunks(MOST) {
            let stream = lines.len();
            let (mut places, mut bodies) = (String::new(), Vec::new());
            for (at, (number, body)) in together.iter().enumerate() {
                places += &format!("{number} {} ", bodies.len());
                bodies.extend_from_slice(body);
                bodies.push(b'\n');
                lines[*number] = (2, stream, at);
            }
            let what = format!("/Type/ObjStm/N {}/First {}", together.len(), places.len());
            lines.push((1, file.len(), 0));
            put(&mut file, stream, &deflated(&what, &[places.as_bytes(), &bodies].concat()));
        }
        let (table, start) = (lines.len(), file.len());
        lines.push((1, start, 0));
        let mut bytes = Vec::new();
        for (kind, place, index) in &lines {
            bytes.push(*kind);
            bytes.extend((*place as u32).to_be_bytes());
            bytes.extend((*index as u16).to_be_bytes());
        }
        let trailer = String::from_utf8_lossy(&self.trailer);
        let what = format!("/Type/XRef/W[1 4 2]/Size {}{trailer}", lines.len());
        put(&mut file, table, &deflated(&what, &bytes));
        file.extend(format!("startxref\n{start}\n%%EOF").bytes());
        file
    }
}

/// Writes an object.
fn put(file: &mut Vec<u8>, number: usize, body: &[u8]) {
    file.extend(format!("{number} 0 obj\n").bytes());
    file.extend_from_slice(body);
    file.extend_from_slice(b"\nendobj\n");
}

/// A packed stream.
fn deflated(what: &str, bytes: &[u8]) -> Vec<u8> {
    let mut packer = ZlibEncoder::new(Vec::new(), Compression::best());
    packer.write_all(bytes).expect("memory takes every byte");
    let packed = packer.finish().expect("memory takes every byte");
    let length = packed.len();
    let head = format!("<<{what}/Filter/FlateDecode/Length {length}>>\nstream\n");
    [head.as_bytes(), &packed, b"\nendstream"].concat()
}

/// Where some bytes stand last.
fn last(file: &[u8], wanted: &[u8]) -> Option<usize> {
    file.windows(wanted.len()).rposition(|bytes| bytes == wanted)
}

#[cfg(test)]
mod tests;
