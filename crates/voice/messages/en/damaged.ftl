### A file that is damaged.

damaged-title = Part of this collection is damaged
damaged-file = A part of { $file } is not what Spinney wrote. The file itself was not changed.
damaged-step = Step { $step } of { $steps } cannot be read.
damaged-step-when = Step { $step } of { $steps } cannot be read. It was made on { $when }.
damaged-when = { $day } at { $time }
damaged-no-step = Every step can be read. Something else in the file was changed.
damaged-more = { $count ->
    [one] One more step cannot be read.
   *[other] { $count } more steps cannot be read.
}
damaged-pictures = { $count ->
    [one] One picture is lost.
   *[other] { $count } pictures are lost.
}
damaged-pictures-unknown = Pictures may be missing too.
damaged-nothing = Nothing of it can be saved. Open an older copy of it.
damaged-end = Steps may be missing at the end. The file does not say how many there were.
damaged-save = Save what can be read
damaged-save-help = Spinney puts it into a new file, { $new }, and opens that one. Keep { $file } until you have looked everything over.
damaged-all = { $count ->
    [one] Save one step
   *[other] Save { $count } steps
}
damaged-all-help = Everything that can be read, before and after the damage. Look it over: what came after may rest on what is lost.
damaged-before = { $count ->
    [one] Save one step
   *[other] Save { $count } steps
}
damaged-before-help = Only what came before the damage, exactly as it was then.
