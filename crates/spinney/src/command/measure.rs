//! `spinney measure`: the leaves in scans and photographs, with their measures.

mod pictures;
mod side_by_side;

use std::collections::BTreeSet;
use std::fmt::Write;
use std::path::{Path, PathBuf};

use spinney_exchange::{json, measured, mends};
use spinney_measure::Picture;
use spinney_model::{LeafNote, MeasuredPicture, Mend, NoMend, PictureError};
use spinney_press::{lines, measured_picture, pdf, scale_card, scale_strip, svg};
use spinney_voice::Tongue;
use spinney_voice::measured as say;

use crate::args::{Measure, MeasureFormat};
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::folder::Folder;
use crate::report::{self, Ink};
use crate::terminal::Progress;
use crate::{opened, terminal};

pub(crate) fn run(t: Tongue, args: &Measure) -> Result<bool, Failure> {
    let over = Over::forced(args.force);
    if let Some(file) = &args.scale_card {
        return write_card(t, file, args, over);
    }
    let files = pictures::all(&args.files)?;
    let mends = args.mends.as_deref().map(|path| mends_of(path, &files)).transpose()?;
    let mends = mends.as_ref();
    let mut folder = args.out.as_ref().map(|path| Folder::make(path, over)).transpose()?;
    let names = Names::all(&files);
    let mut progress = Progress::new();
    let told = |done: usize| match files.as_slice() {
        [only] => t.with("measure-looking", &[("file", &only.display())]),
        _ => t.with("measure-looking-at", &[("done", &done), ("all", &files.len())]),
    };
    progress.say(&told(0));
    let work = |path: &Path, bytes: &[u8]| {
        let (picture, found) = measured_in(path, bytes, args)?;
        let mut measured = mended(found, mends)?;
        spinney_measure::look_for_veins(&picture, &mut measured);
        let beside = args.out.as_ref().map(|_| beside(t, &picture, &measured));
        // What lies about until the others are measured is as short as it is written.
        measured.leaves.iter_mut().for_each(|leaf| json::thin(&mut leaf.lines));
        Ok::<_, Failure>((measured, beside.unwrap_or_default()))
    };
    let mut looked: Vec<Option<Result<MeasuredPicture, Failure>>> = Vec::new();
    looked.resize_with(files.len(), || None);
    let mut done = 0;
    side_by_side::each(&files, work, |at, made| {
        let made = made.unwrap_or_else(|| {
            Err(Failure::new("failure-measuring-bug", [("file", (&*files[at]).into())]))
        });
        done += 1;
        progress.say(&told(done));
        looked[at] = Some(match (made, &mut folder) {
            (Ok((measured, beside)), Some(folder)) => {
                for (ending, bytes) in beside {
                    folder.write(&format!("{}-{ending}", names[at]), &bytes)?;
                }
                Ok(measured)
            }
            (made, _) => made.map(|(measured, _)| measured),
        });
        Ok(())
    })?;
    drop(progress);
    let mut all: Vec<(String, MeasuredPicture)> = Vec::new();
    let mut failed = false;
    for (path, looked) in files.iter().zip(looked.into_iter().flatten()) {
        match looked {
            Ok(measured) => all.push((path.display().to_string(), measured)),
            // A picture that cannot be measured does not lose the others.
            Err(failure) => {
                failure.tell(t);
                failed = true;
            }
        }
    }
    if all.is_empty() {
        return Ok(false);
    }
    // It is long: once for both.
    let wanted = folder.is_some() || args.format == MeasureFormat::Json;
    let in_json = if wanted { json::measured(&all) } else { String::new() };
    let mut written = None;
    if let (Some(mut folder), Some(path)) = (folder, &args.out) {
        folder.write("leaves.csv", measured::csv(&all).as_bytes())?;
        folder.write("leaves.json", in_json.as_bytes())?;
        written = Some((path, folder.finish()?));
    }
    match args.format {
        MeasureFormat::Json => terminal::print_json(&in_json)?,
        MeasureFormat::Csv => terminal::print(&measured::csv(&all))?,
        MeasureFormat::Text => {
            let ink = Ink::terminal(t);
            let mut text: String = all.iter().map(|one| in_words(&ink, one)).collect();
            if let Some((path, files)) = written {
                text.push_str(&report::written(t, path, &files));
            }
            terminal::print(&text)?;
        }
    }
    Ok(!failed)
}

/// Writes the sheet to photograph leaves on, or the strips to lie beside them.
fn write_card(t: Tongue, file: &Path, args: &Measure, over: Over) -> Result<bool, Failure> {
    let paper = args.paper.size();
    let (sheet, message) = match args.strip {
        true => (scale_strip::alone(t, paper), "run-scale-strip"),
        false => (scale_card::alone(t, paper), "run-scale-card"),
    };
    let bytes = pdf::write(&sheet).map_err(|error| Failure::saying(move |t| error.told(t)))?;
    if file == Path::new("-") {
        return terminal::print_bytes(&bytes).map(|()| true);
    }
    if file.extension().is_none_or(|ending| !ending.eq_ignore_ascii_case("pdf")) {
        return Err(Failure::usage("failure-not-pdf", [("file", file.into())]));
    }
    files::write_whole(file, &bytes, over)?;
    let written = t.with(message, &[("file", &file.display())]);
    terminal::print(&format!("{written}\n"))?;
    Ok(true)
}

/// The picture of a file, and what is measured in it.
fn measured_in(
    path: &Path,
    bytes: &[u8],
    args: &Measure,
) -> Result<(Picture, MeasuredPicture), Failure> {
    let why = |error: PictureError| {
        let name = path.display().to_string();
        Failure::saying(move |t| say::picture_error(t, &name, error))
    };
    let picture = spinney_measure::read(bytes, args.dpi).map_err(why)?;
    if args.rubbing {
        let measured = spinney_measure::measure_rubbing(&picture).map_err(why)?;
        // From here on it is for looking at: on white paper.
        return Ok((spinney_measure::on_white(picture), measured));
    }
    let measured = spinney_measure::measure(&picture).map_err(why)?;
    Ok((picture, measured))
}

/// Mends, each with its line, and the file they stand in.
struct Mends {
    file: String,
    lines: Vec<(usize, Mend)>,
}

fn mends_of(path: &Path, files: &[PathBuf]) -> Result<Mends, Failure> {
    if files.len() != 1 {
        return Err(Failure::usage("failure-mends-of-one", []));
    }
    if path == Path::new("-") && files[0] == path {
        return Err(Failure::usage("failure-stdin-once", []));
    }
    let file = path.display().to_string();
    let text = opened::mends(path)?;
    let lines = mends::read(&text).map_err(|no| cannot(&file, no))?;
    Ok(Mends { file, lines })
}

fn cannot(file: &str, no: NoMend) -> Failure {
    let file = file.to_owned();
    Failure::saying(move |t| say::no_mend(t, &file, &no))
}

/// The leaves after what a person said of them.
fn mended(found: MeasuredPicture, mends: Option<&Mends>) -> Result<MeasuredPicture, Failure> {
    let Some(Mends { file, lines }) = mends else { return Ok(found) };
    let all: Vec<Mend> = lines.iter().map(|(_, mend)| *mend).collect();
    spinney_measure::mended(&found, &all).map_err(|(at, why)| {
        let (line, mend) = lines[at];
        cannot(file, NoMend { line, text: mends::in_words(&mend), why: Some(why) })
    })
}

/// A file that is written of a picture: how its name goes on after the picture's, and its bytes.
type Beside = (String, Vec<u8>);

/// The picture with its lines, and each leaf alone: cut out, and as a drawing in lines.
fn beside(t: Tongue, picture: &Picture, measured: &MeasuredPicture) -> Vec<Beside> {
    let mut files = Vec::new();
    let shown = picture.shown();
    let pixels = (shown.dimensions(), &shown.as_raw()[..]);
    if let Ok(sheet) = measured_picture::sheet(t, pixels, measured, String::new()) {
        let pages = sheet.pages.iter().map(|page| svg::write(page).into_bytes());
        files.extend(pages.map(|page| ("measured.svg".to_owned(), page)));
    }
    for leaf in &measured.leaves {
        if let Ok(file) = spinney_measure::cut_out(picture, &leaf.lines) {
            files.push((format!("leaf-{:02}.png", leaf.number), file));
        }
        let drawn = spinney_draw::of_measured(&leaf.lines, &leaf.form, measured.scale.mm());
        if let Some(drawing) = drawn {
            let title = t.with("measure-leaf", &[("number", &leaf.number)]);
            let file = lines::file(&drawing, &title).into_bytes();
            files.push((format!("leaf-{:02}-lines.svg", leaf.number), file));
        }
    }
    files
}

/// What the files written of a picture are called after it, no two alike.
#[derive(Default)]
struct Names {
    used: BTreeSet<String>,
}

impl Names {
    /// One for each, in their order.
    fn all(files: &[PathBuf]) -> Vec<String> {
        let mut names = Self::default();
        files.iter().map(|path| names.of(path)).collect()
    }

    fn of(&mut self, path: &Path) -> String {
        let stem = path.file_stem().unwrap_or("stdin".as_ref()).to_string_lossy().into_owned();
        let stem = if stem == "-" { "stdin".to_owned() } else { stem };
        let more = (2..).map(|at| format!("{stem}-{at}"));
        let mut names = std::iter::once(stem.clone()).chain(more);
        // Names differ though a disk takes capitals for small letters.
        let name = names.find(|name| self.used.insert(name.to_lowercase()));
        name.expect("there is always a further number")
    }
}

/// A picture with its leaves, for a person.
fn in_words(ink: &Ink, (file, picture): &(String, MeasuredPicture)) -> String {
    let t = ink.t();
    let mut text = String::new();
    report::push_wrapped(&mut text, "", &say::picture(t, file, picture));
    report::push_wrapped(&mut text, "  ", &say::coarse(t, picture.scale));
    let notes: Vec<&[LeafNote]> = picture.leaves.iter().map(|leaf| &leaf.notes[..]).collect();
    report::push_wrapped(&mut text, "  ", &say::rubbed(t, &notes));
    if picture.like_a_rubbing {
        report::push_wrapped(&mut text, "  ", &t.say("measure-like-a-rubbing"));
    }
    for leaves in &picture.cut_apart {
        report::push_wrapped(&mut text, "  ", &say::cut_apart(t, leaves));
    }
    // Said of the picture already.
    let said = [LeafNote::Rubbed, LeafNote::CutApart];
    for leaf in &picture.leaves {
        let heading = ink.bold(&t.with("measure-leaf", &[("number", &leaf.number)]));
        let _ = writeln!(text, "  {heading}");
        let measures: Vec<String> =
            leaf.measures.iter().flatten().map(|it| say::measure(t, it)).collect();
        report::push_wrapped(&mut text, "    ", &measures.join(" · "));
        report::push_wrapped(&mut text, "    ", &say::form(t, &leaf.form).join(" · "));
        for note in leaf.notes.iter().filter(|note| !said.contains(note)) {
            report::push_wrapped(&mut text, "    ", &say::leaf_note(t, *note));
        }
    }
    let left_out = say::left_out(t, &picture.left_out);
    report::push_wrapped(&mut text, "  ", &left_out);
    text
}
