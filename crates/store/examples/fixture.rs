//! Writes the file of today's form that is kept as a fixture: `form_N.spinney` of the tests. It
//! is run once for each new form, before the form changes again.

use std::path::PathBuf;

use spinney_store::Store;

fn main() {
    let path = PathBuf::from(std::env::args_os().nth(1).expect("a new file comes first"));
    let mut store = Store::create(&path).expect("there is none yet");
    let lines: [&[u8]; 2] = [
        br#"{"v":1,"at":0,"edits":[{"add_kind":{"kind":1,"name":"yew"}}]}"#,
        br#"{"v":1,"at":7,"undo":true}"#,
    ];
    let lines = lines.map(<[u8]>::to_vec);
    store.append(0, &lines, &[b"a picture".to_vec()]).expect("it can be written");
}
