//! What is typed into a cell, in a column of words, of counts, of lengths and of bare numbers.

use spinney_model::{CharacterIx, TaxonIx};

use crate::{approved, said, table};

/// As people type them: plain, several, ranges, counted, of so many, with units, empty, wrong.
const TYPED: &str = "toothed|Toothed|TOOTHED |smooth or toothed|smooth, toothed|smooth/toothed|\
    smooth; toothed|smooth & toothed|smooth and toothed|smooth + toothed|toothed (mostly)|\
    mostly toothed|sometimes toothed|toothed, rarely smooth|not toothed|toothed?|toothed 3|\
    toothed 3, smooth 1|toothed: 3; smooth: 1|3 toothed, 1 smooth|3x toothed|toothed x3|\
    toothed 75 %, smooth 25 %|toothed 75%, smooth 20%|toothed 75 %|toothed 3/4, smooth 1/4|\
    toothed 1/3, smooth 1/3|toothed 3 of 4|toothed 3 of 4, smooth 1 of 4|toothed 3/10|\
    toothed 0, smooth 4|toothed 0|tothed|toothd|wavy|red|yes|no|yes 3 of 10|yes 3, no 7|\
    3 yes 7 no|y|n|ja|nein|x|X|-|–|+|✓|?|??|unknown|not known|n/a|N/A|na|none|nil|does not apply|\
    not applicable|.|..|0|1|5|7|05|5.0|5,0|5.5|5,5|.5|,5|5.|-5|+5|5-7|5–7|5 - 7|5 to 7|5 or 7|5 and 7|\
    5, 7|5; 7|5/7|5..7|7-5|5-5|5-7-9|5 or 7 or 9|5, 6, 7|5-7 or 9|5-7, 9-11|(5)|(3-)5-7(-9)|\
    (3)5-7|5(-7)|5+|5 or more|more than 5|>5|>=5|≥5|<5|<= 5|≤5|at least 5|up to 5|about 5|~5|ca. 5|\
    c. 5|5±1|5 ± 1|5 +/- 1|five|five or seven|two to three|5 x2|5 x 2, 7|5: 2, 7: 1|5 in 3 of 4|\
    5 mm|5mm|5 cm|5cm|5 CM|0.5 cm|0,5 cm|.5 cm|½ cm|1/2 cm|5 m|5 km|5 in|5 inch|5 inches|5\"|5'|5 ft|\
    5-7 mm|5-7 cm|5-7cm|5 mm - 7 mm|5 mm to 7 cm|5 mm-7 cm|0.5-0.7 cm|5 mm or 7 mm|5 g|5 kg|5°|5 deg|\
    50 %|5 %|12 leaves|5 leaflets|5 long|5 mm long|1.234|1,234|1.2345|1 234|1,234.5|1.234,5|\
    999999999|9999999999|99999999999999999999|1e3|1e-3|5e|0x10|NaN|inf|1/0|5/0|0/5|-|- 5|--5|5--7|\
    5-|-5-7|5 -|–5|!5|#N/A|#REF!|=5|'5|\"5\"|5 mm?|5?|? 5|5 (2023)|5 [1]|5*|1 Jan|5. Mai|12:30|\
    2023-05-07|TRUE|FALSE|true|wahr|null|(empty)|tbc|later|see hazel|same|ditto|\"|as above";

const COLUMNS: [&str; 4] = ["edge", "leaflets", "length (mm)", "width"];

#[test]
fn whatever_is_typed_into_a_cell() {
    let mut lines = Vec::new();
    for typed in TYPED.split('|').chain(["", " ", "a|b"]) {
        for (at, column) in COLUMNS.iter().enumerate() {
            let beside = [
                ["toothed", "smooth", "smooth or toothed"],
                ["5", "7", "9 or 11"],
                ["12-20", "30", "15-18"],
                ["1.2", "2.4-3", "2"],
            ][at];
            let text = format!(
                "kind\t{column}\nhazel\t{}\nelm\t{}\nivy\t{}\nlime\t{typed}\n",
                beside[0], beside[1], beside[2]
            );
            let read = table(&text, None);
            let mut line = vec![format!("{typed} | {column}")];
            let column = CharacterIx(0);
            match read.matrix.characters().first() {
                Some(character) if read.matrix.taxa().len() > 3 => {
                    let cell = read.matrix.cell(TaxonIx(3), column);
                    line.push(said::cell(cell, &character.scale));
                }
                _ => line.push("no such cell".to_owned()),
            }
            if let Some(character) = read.matrix.characters().first() {
                let scale = said::scale(&character.scale);
                let usual = said::scale(
                    &table(&usual(COLUMNS[at], beside), None).matrix.characters()[0].scale,
                );
                if scale != usual {
                    line.push(format!("column: {scale}"));
                }
            }
            line.extend(read.findings.iter().map(said::short));
            lines.push(line.join(" | "));
        }
    }
    approved("cells.txt", &lines);
}

/// The same table without the cell.
fn usual(column: &str, beside: [&str; 3]) -> String {
    format!("kind\t{column}\nhazel\t{}\nelm\t{}\nivy\t{}\n", beside[0], beside[1], beside[2])
}
