### What was found by the reader of tables: of cells, of columns, and of sheets and files.

finding-at = { " " }({ $cell })
finding-in = { " " }in { $cell }
finding-this-cell = this cell
finding-row-of-sheet = row { $row } of the sheet “{ $sheet }”
finding-headings = the headings
finding-heading = the heading “{ $heading }”
finding-kind-cell = the name of { $kind }
finding-kind-under = { $kind }, { $about }
finding-row = row { $row }
finding-row-under = row { $row }, { $about }
finding-more-like = { $count ->
    [one] One more like these: { $last }.
   *[other] And { $count } more like these; the last is { $last }.
}

## Cells.
finding-cell-odd = “{ $text }” for { $kind } under “{ $about }”{ $at } { $trouble }. It counts as: nobody has looked.
finding-cell-mixed = mixes words and numbers
finding-cell-mixed-remedy = Type words or numbers, `red or blue`, or counts of each, `red 8, blue 2`.
finding-cell-half-counted = has a count for some of its words and none for others
finding-cell-half-counted-remedy = Give every word its count, `red 8, blue 2`, or none, `red or blue`.
finding-cell-shares = has percentages that do not add up to 100
finding-cell-shares-remedy = Let them add up to 100 %, or type how many of each you saw.
finding-cell-no-count = counts none, or more than can be counted
finding-cell-no-count-remedy = Leave out what nobody saw; type the count in digits.
finding-cell-not-a-number = is neither a number nor a range
finding-cell-not-a-number-remedy = Type `40 mm`, `4 cm` or a range, `30-60`; what is not certain is a wider range.
finding-cell-backwards = begins with the larger number
finding-cell-backwards-turned = Type `{ $turned }` if that is meant. If not, look whether a digit is missing or one too many.
finding-cell-backwards-remedy = Type the smaller number first, and look whether a digit is missing.
finding-cell-one-end = says only where the range begins or ends
finding-cell-one-end-remedy = Type both ends of what was seen, such as `5-9` or `15-20 mm`.
finding-cell-out-of = says how many of how many, but not what the others were
finding-cell-out-of-remedy = Type how many of each were seen, such as `red 3, blue 7` or `yes 3, no 7`.
finding-cell-ambiguous = may mean a thousand or a decimal
finding-cell-ambiguous-either = Type `{ $thousands }`, or `{ $decimals }`.
finding-cell-ambiguous-remedy = Type `{ $thousands }` if that is meant, or decimals with a point.
finding-cell-a-word = is a word in a column of numbers
finding-cell-a-word-remedy = Type a number or a range, `?` if nobody knows, or `n/a` if there is none.
finding-cell-not-whole = is no whole number in a column of counts
finding-cell-not-whole-remedy = Type whole numbers, `5 or 7`. For a measure give the column a unit: (mm).
finding-cell-wide = is too wide for a count
finding-cell-wide-remedy = Type the numbers that were seen, `5 or 7`. For a measure give the column a unit.
finding-cell-below-nothing = is less than nothing
finding-cell-below-nothing-remedy = Measure once more: no length, weight or ratio is below 0.
finding-cell-other-unit = has a unit that the rest of the column does not have
finding-cell-other-unit-remedy = Give every cell of a column the same sort of unit.
finding-cell-a-number = is a number in a column of words
finding-cell-a-number-remedy = Type one of the column's words, or put numbers into a column of their own.
finding-cell-neither = is neither yes nor no, as other cells of the column are
finding-cell-neither-remedy = Type `yes`, `no`, `yes or no` where you saw both, or counts of each: `yes 3, no 7`. If there are more answers than these two, name them all under “states” on the sheet “characters”.
finding-cell-date = is a date: a spreadsheet makes that of a range
finding-cell-date-remedy = Format the column as text first, then type `{ $low }-{ $high }` again, or write it `{ $low } to { $high }`.
finding-cell-two-measurements = holds two measurements
finding-cell-two-measurements-remedy = Make two columns of it, such as length and width.
finding-cell-read = “{ $text }” for { $kind } under “{ $about }”{ $at } is read as { $read }.
finding-cell-unknown = “nobody has looked”
finding-cell-unknown-remedy = Does it mean that the kind has no such thing? Then type `n/a`. Does nobody know? Then type `?`.
finding-cell-each = “or”, each of them equally often
finding-cell-each-own = Type `{ $own }`, or counts of what you saw: `red 8, blue 2`.
finding-cell-each-remedy = Type `red or blue`, or counts of what you saw: `red 8, blue 2`.
finding-cell-one-range = one range from the smallest to the largest
finding-cell-one-range-remedy = Nothing to do, if anything in between may be found. A measure has one range.
finding-cell-state = a state like the other words
finding-cell-state-remedy = Type the word that it means in this column, or put yes and no into a column of their own.
finding-cell-to-see = a word for something to see
finding-cell-to-see-remedy = If nobody has looked, type `?` there.
finding-cell-word = a word
finding-cell-word-remedy = In some picture letters this is a tick or a cross. If it is one, type yes or no.
finding-cell-error = “{ $text }” for { $kind } under “{ $about }”{ $at } is no word of yours: the spreadsheet { $why }. It counts as: nobody has looked.
finding-cell-error-remedy = Type the word or number itself.
finding-cell-lost-cell = has lost the cell it was taken from
finding-cell-not-found = has not found what it was to look up
finding-cell-cannot-calculate = cannot calculate with what it was given
finding-cell-unknown-word = does not know a word in a formula
finding-cell-divided = was to divide by nothing
finding-cell-no-number = has got a number that is none
finding-cell-lost-cells = has lost the cells it was taken from
finding-cell-undeclared = “{ $state }”{ $in } is none of the states of “{ $about }” on the sheet “characters”; it is read as a further one.
finding-cell-undeclared-remedy = Add it to the states, or mend the spelling in the table.
finding-cell-alike = “{ $one }” and “{ $other }”{ $at } under “{ $about }” look like one word spelt twice; they are read as two states.
finding-cell-alike-remedy = Spell them alike if they are one state. If they are two, choose words that differ more.
finding-cell-governed = { $kind } has something under “{ $about }”{ $at }, although its “{ $above }” says that it has no such thing. It is read as “does not apply”.
finding-cell-governed-remedy = Type `n/a` there, or mend the other cell, or the condition on “characters”.
finding-cell-no-ratio = “{ $about }” of { $kind } cannot be worked out, because its “{ $one }” or “{ $other }” is not above zero. It counts as: nobody has looked.
finding-cell-no-ratio-remedy = Type lengths above zero.
finding-cell-and-more = { " " }and { $more } more
finding-cell-not-recorded = Nobody has recorded “{ $about }” of { $kinds }.
finding-cell-not-recorded-remedy = Look at one and fill the cell, or type `n/a` if it has no such thing.
finding-cell-some-have-none = { $kind }: { $none } of { $finds } have no “{ $about }”. What the others show counts.
finding-cell-some-have-none-remedy = Look at these again. If it is true, “{ $about }” does not suit { $kind }: type `n/a` in each of its rows, or leave the column out.
finding-cell-beside-marks = Under “{ $about }” there is nothing but ticks, crosses or yes, and blanks for { $kinds }. A blank counts as: nobody has looked.
finding-cell-beside-marks-remedy = Does a blank mean no? If so, type no there, and yes in the others.
finding-cell-spoilt = “{ $text }”{ $at } looks as if its letters were spoilt when the file was saved. Is it “{ $right }”?
finding-cell-spoilt-remedy = Type it again, or save the table from the spreadsheet once more, as XLSX.
finding-cell-cut = The curly quotation marks in row { $row } do not hold a cell together: it was cut at the comma.
finding-cell-cut-remedy = Type straight ones: "{ $before }, { $behind }".
finding-cell-far = The cell { $cell } is farther right than the { $most } columns that are read.
finding-cell-far-remedy = Move it next to the others, or delete it if it is a slip.
finding-cell-long = The text{ $in } is longer than { $most } letters and was left out.
finding-cell-long-remedy = Shorten it. In a CSV file, look for a quotation mark that is never closed.
finding-cell-formula = { $cell } holds a formula; its last result is read.
finding-cell-formula-remedy = Copy the column and paste the values only, so that nothing changes unseen.
finding-cell-text-lost = { $cell } points to a text that is missing.
finding-cell-text-lost-remedy = Type the cell again.
finding-cell-shows-error = { $cell } shows the error { $error }.
finding-cell-shows-error-remedy = Type the value itself, or ? if nobody knows it.
finding-cell-made-a-date = { $cell } was turned into a date by the spreadsheet.
finding-cell-made-a-date-remedy = Format the column as text and type the range again, or write it `3 to 5`.
finding-cell-merged = { $cell } to { $to } are merged; “{ $text }” is read in each of them.
finding-cell-merged-remedy = Nothing to do, if it is true of each. Otherwise unmerge them and fill every cell.

## Columns.
finding-column-twice = The heading “{ $heading }” is there twice. The second, in { $cell }, is called “{ $called }” here.
finding-column-twice-remedy = Give each column its own heading, or delete one of the two.
finding-column-nameless = { $cell } has no heading; it is called “{ $called }” here.
finding-column-nameless-somewhere = One column has no heading; it is called “{ $called }” here.
finding-column-nameless-remedy = Type what the column is about. If a decimal comma cut a number in two (2,5), write 2.5, or put it in quotes. Merged headings count for their first column only.
finding-column-touch = “{ $about }” is taken as something that pupils touch.
finding-column-touch-remedy = Write yes or no under “by touch” on the sheet “characters”.
finding-column-in-order = The states of “{ $about }” are taken to be in the order in which the table names them: { $states }.
finding-column-in-order-remedy = List them in their order under “states” on the sheet “characters”.
finding-column-margin = The safety margin of “{ $about }” has another unit than its column.
finding-column-margin-remedy = Type the safety margin in the unit of the column.
finding-column-numbered = The numbers behind the words under “{ $about }” are taken as part of their names.
finding-column-numbered-remedy = If they count what was seen, write `red 8, blue 2` in at least one cell.
finding-column-number-words = The words under “{ $about }”, such as “{ $text }”{ $at }, are read as numbers.
finding-column-number-words-remedy = Type digits. If they are only names, write words under “values” on the sheet “characters”.
finding-column-too-many-counts = “{ $about }” is said to hold counts, but has more than { $most } different numbers. It is read as a measure without a unit and without a safety margin.
finding-column-too-many-counts-remedy = Give it a unit on the sheet “characters”, or leave kinds with many numbers to another table.
finding-column-unit-of-others = { $cell } has no unit. It is read in { $unit }, as other cells under “{ $about }” have it.
finding-column-unit-assumed = The numbers under “{ $about }”, such as in { $cell }, have no unit and are read in { $unit }.
finding-column-unit-remedy = Write the unit into the heading, such as (mm) or (cm), or into the sheet “characters”; for whole numbers that are counted write count there.
finding-column-no-unit = “{ $about }” is read as a measure and not as counts because of { $because }. In what is it measured? Nobody says so, and it is used without a unit and without a safety margin.
finding-column-no-unit-remedy = Write the unit into the heading, such as (mm) or (cm). If it is counted, type whole numbers; if it has no unit, write none under “unit” on the sheet “characters”.
finding-column-because-cell = “{ $text }” for { $kind }{ $at }
finding-column-because-many = more than { $most } different numbers in it
finding-column-remarks = “{ $about }” holds sentences, another one for each kind, and was left out: no question comes of them.
finding-column-remarks-remedy = Nothing to do, if they are remarks. If it is a character, describe it in a few words that several kinds share.
finding-column-notes = “{ $about }” has more than { $most } different texts, so it is taken for notes and left out.
finding-column-notes-remedy = If it is a character, describe it in a few words that several kinds share.
finding-column-states = The states of “{ $about }” name one twice, or are more than { $most }.
finding-column-states-remedy = Name each state once.
finding-column-no-ratio = “{ $about }”{ $at } cannot be worked out: { $why }.
finding-column-no-ratio-remedy = Type two columns of lengths: `length / width`.
finding-column-ratio-no-column = “{ $name }” is no column of the table
finding-column-ratio-not-two = “{ $text }” does not name two columns
finding-column-ratio-of-a-ratio = one of the two is a ratio itself
finding-column-ratio-not-measured = “{ $name }” is not measured
finding-column-ratio-itself = it is one column over itself
finding-column-ratio-units = the two are measured in different units
finding-column-no-condition = The condition of “{ $about }”{ $at } { $why }.
finding-column-no-condition-remedy = Type another character in words and some of its states: `form = feather or hand`.
finding-column-condition-no-column = names “{ $name }”, which is no column of the table
finding-column-condition-numbers = names “{ $name }”, which holds numbers, not words
finding-column-condition-no-state = names “{ $state }”, which is no state of “{ $name }”
finding-column-condition-no-states = names no state of “{ $name }”
finding-column-condition-itself = leads back to itself
finding-column-does-not-apply = { $count ->
    [one] One cell under “{ $about }” with nothing in it is read as “does not apply”, because “{ $above }” says so.
   *[other] { $count } cells under “{ $about }” with nothing in them are read as “does not apply”, because “{ $above }” says so.
}
finding-column-does-not-apply-remedy = Nothing to do, or type `n/a` to make it plain.
finding-column-no-room = “{ $about }” does not fit any more and was left out.
finding-column-no-room-remedy = Split the table into several, or type fewer alternatives into a cell.
finding-column-read-right-strange = How often “{ $about }” is read right{ $at } is given for “{ $name }”, which is no kind of the table.
finding-column-read-right-strange-remedy = Spell it as in the table, or strike it out.
finding-column-read-right-twice = How often “{ $about }” is read right{ $at } is given for “{ $name }”, a second time; the first counts.
finding-column-read-right-twice-remedy = Name each kind once.

## Sheets and files.
finding-sheet-odd = “{ $text }”{ $in } is no { $what }.
finding-sheet-one-of-remedy = Type { $before } or { $last }.
finding-sheet-some-of-remedy = Type some of: { $words }.
finding-sheet-values = sort of values
finding-sheet-unit = unit
finding-sheet-unit-of-ratio = unit of a ratio
finding-sheet-unit-of-ratio-remedy = Leave it empty: a length over a length has no unit.
finding-sheet-margin = safety margin
finding-sheet-margin-remedy = Type one number, such as 5 mm.
finding-sheet-seen-on = place to see it
finding-sheet-difficulty = difficulty
finding-sheet-per-cent = share in per cent
finding-sheet-per-cent-remedy = Type a number from 0 to 100, and after it kinds that differ: `90; holly 60`.
finding-sheet-yes-or-no = yes or no
finding-sheet-by-touch-remedy = Type yes if pupils have to touch it, else no.
finding-sheet-in-order-remedy = Type yes if its states have an order.
finding-sheet-season = season
finding-sheet-instrument = instrument
finding-sheet-condition = condition
finding-sheet-condition-remedy = Type another character and its states: `form = feather or hand`.
finding-sheet-times-met = number of times above zero
finding-sheet-times-met-remedy = Type a number, or often, sometimes or rarely; leave out a kind nobody sees.
finding-sheet-how-many = number of children or groups
finding-sheet-how-many-remedy = Type a whole number from 1 to { $most }, without words.
finding-sheet-row-not-read = “{ $text }” of the sheet “{ $sheet }” is not read.
finding-sheet-row-not-read-remedy = Nothing to do, or call it { $before } or { $last }.
finding-sheet-column-not-read = The column “{ $heading }” of “{ $sheet }” is not read.
finding-sheet-column-not-read-remedy = Nothing to do, or call it one of: { $usual }.
finding-sheet-no-character = The character “{ $name }”{ $at } is not in the table.
finding-sheet-no-kind-there = The kind “{ $name }”{ $at } is not in the table.
finding-sheet-not-there-remedy = Spell it as in the table, or delete the row.
finding-sheet-second-character = The character “{ $name }” has a second row{ $in }; the first counts.
finding-sheet-second-kind = The kind “{ $name }” has a second row{ $in }; the first counts.
finding-sheet-second-remedy = Keep one of the rows.
finding-sheet-not-closed = In row { $row } a quotation mark is opened{ $at } and not closed, so that the rest of the table is in that cell.
finding-sheet-not-closed-remedy = Take the quotation mark out, or close it.
finding-sheet-title = “{ $title }” is alone above the headings and is taken for a title.
finding-sheet-title-remedy = Nothing to do, if it is one. A title for print goes on the sheet “about”.
finding-sheet-counts-rows = The first column counts the rows and was left out. The names of the kinds are read from the next one, “{ $kinds }”.
finding-sheet-counts-rows-headed = The first column, “{ $heading }”, counts the rows and was left out. The names of the kinds are read from the next one, “{ $kinds }”.
finding-sheet-counts-rows-remedy = Nothing to do, if that is right. Otherwise take that column out.
finding-sheet-swapped = Rows and columns seem to be swapped: the names of the kinds are along the top.
finding-sheet-swapped-remedy = Turn the table round, so that each kind is a row. In a spreadsheet: copy it, and paste it with Transpose.
finding-sheet-no-headings = Row { $row } has no headings: it says { $says }, like the rows below.
finding-sheet-no-headings-remedy = Put a row above it that says what each column is, such as kind, colour, length.
finding-sheet-often = How often you see a kind is given in words: often counts 4, sometimes 2, rarely 1. A kind without a word counts as seen sometimes.
finding-sheet-often-remedy = Type numbers if that is not what you mean.
finding-sheet-file = “{ $file }” is not read: “{ $read }” is.
finding-sheet-file-remedy = Take in one table after the other. Files beside a table are called characters, kinds and about.
finding-sheet-left-one = Only the sheet “{ $read }” was read, and “{ $first }” was not.
finding-sheet-left-two = Only the sheet “{ $read }” was read, and “{ $first }” and “{ $second }” were not.
finding-sheet-left-more = Only the sheet “{ $read }” was read, and “{ $first }” and { $more } more were not.
finding-sheet-left-remedy = If its rows belong to the table, copy them under the others. If it is the table, drag it to the front. Sheets beside the table are called characters, kinds and about.
finding-sheet-adds-up = Row { $row }, “{ $name }”, was left out: it adds up the others and is no kind.
finding-sheet-note = Row { $row }, “{ $name }”, was left out: it is a note and no kind.
finding-sheet-no-kind-remedy = Put it on another sheet. If it is a kind, give it another name.
finding-sheet-nameless = Row { $row } has no name{ $at } and was left out.
finding-sheet-nameless-remedy = Type the kind's name. If cells are merged there, unmerge them and fill each row.
finding-sheet-too-many-kinds = The table has more than { $most } kinds; { $kind } and all below are left out.
finding-sheet-too-many-finds = The table has more than { $most } rows with a find; row { $row } and all below are left out.
finding-sheet-too-many-finds-remedy = Split the table by kind, and take in one part after the other.
finding-sheet-split-remedy = Split the table into several, for instance by family.
finding-sheet-kind-twice = “{ $one }”{ $first } and “{ $other }”{ $second } are written almost alike. Are they one kind or two? They are read as two, and the second is called “{ $called }” here.
finding-sheet-kind-twice-remedy = Delete one row. Two kinds need two names.
finding-sheet-kind-twice-differ = Delete one row, or make them one: `{ $this } or { $that }`. Two kinds need two names.
finding-sheet-several-rows = { $count ->
    [one] “{ $kind }” is on { $rows } rows{ $first }. Each of them is read as a kind of its own; the second is called “{ $called }” here.
   *[other] { $count } kinds are on several rows each; “{ $kind }” is on { $rows }{ $first }. Each row is read as a kind of its own; the second is called “{ $called }” here.
}
finding-sheet-several-rows-remedy = Is each row one leaf (or one shell, one animal) of its kind? Then tell Spinney so: with `--rows leaves` on the command line, on the screens by the choice below the table. If it is not, two kinds need two names.
finding-sheet-find-columns = Which find a row is, and where it comes from, is said under: { $headings }. Nothing is asked about that.
finding-sheet-find-columns-remedy = If one of them is something to look at, give it another heading.
finding-sheet-measuring-columns = { $count ->
    [one] “{ $first }” says how the leaves were measured, or what nobody can see outdoors. Nothing is asked about that.
   *[other] { $count } columns, “{ $first }” the first of them, say how the leaves were measured, or what nobody can see outdoors. Nothing is asked about that.
}
finding-sheet-measuring-columns-remedy = If one of them is something to look at, give it another heading.
finding-sheet-of-no-kind = { $count ->
    [one] One row does not say which kind it is{ $first }, and was left out.
   *[other] { $count } rows do not say which kind they are, the first{ $first }, and were left out.
}
finding-sheet-of-no-kind-remedy = Type the kind there, once somebody knows it.
finding-sheet-damaged = The file is damaged after { $cell }; the rest is missing.
finding-sheet-damaged-remedy = Open it in a spreadsheet, look whether all is there, and save it again.
finding-sheet-full = The sheet holds more than { $cells } filled cells or { $megabytes } MB of text; reading stopped at { $cell }.
