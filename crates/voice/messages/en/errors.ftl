### What could not be done: a file that could not be read or written, a sheet that could not be printed.

## A table that could not be read.
error-not-a-table = { $file } does not look like a table: it is { $what }.
error-old-format = { $file } is { $format }, which is not read here.
error-old-format-remedy = Open it in a spreadsheet and save it as XLSX or CSV.
error-office = an older office file
error-open-document = an OpenDocument file
error-protected = { $file } is protected with a password.
error-protected-remedy = Save a copy without a password.
error-too-large = { $file } is larger than any table of kinds, or unpacks to far more.
error-too-large-remedy = Copy the table alone, without pictures, into a new workbook, or save it as CSV.
error-other-sheet = The first sheet, “{ $sheet }”, is no table. The sheet “{ $other }” looks like one.
error-other-sheet-remedy = Drag that sheet to the front in the spreadsheet, and save it.
error-other-part = { $file } is the sheet { $is }, and not the sheet { $wanted }.
error-other-part-remedy = Give it as the sheet that it is: characters, kinds or about.
error-broken = { $file } is a damaged workbook.
error-broken-remedy = Open it in a spreadsheet and save it again, or as CSV.
error-no-kinds = { $file } has no kinds yet.
error-no-kinds-remedy = Type one kind a row, its name in the first column, below a row of headings.
error-no-kind-column = No column of { $file } says which kind each find is.
error-no-kind-column-remedy = Add a column with the heading `kind`, and type the kind of each find there.
error-does-not-fit = At { $place } there is more than can be taken in.
error-does-not-fit-remedy = Take in only what the key needs, one sheet after the other. Nothing was taken in.

## What a file is that was given for a table.
error-is-empty = empty
error-is-pdf = a PDF
error-is-pdf-remedy = A PDF is made for paper. Give the spreadsheet that it was made from, or type the table as CSV, one kind a row.
error-is-picture = a picture
error-is-photograph = a photograph
error-is-picture-remedy = Spinney cannot read writing in a picture. Type the table into a spreadsheet.
error-is-text-document = a text document
error-is-word = a Word document
error-is-word-remedy = Copy its table into a spreadsheet, and save that as XLSX or CSV.
error-is-libre-office = a LibreOffice file, which is not read here
error-is-libre-office-remedy = Open it there and use Save As to make an XLSX or a CSV.
error-is-numbers = a Numbers file, which is not read here
error-is-numbers-remedy = Open it in Numbers, choose Export To, then Excel or CSV.
error-is-google-sheet = a link to a Google sheet, and the table is not in it
error-is-google-sheet-remedy = Open it in the browser and choose File, Download, Microsoft Excel.
error-is-excel-lock = what Excel keeps while the table is open
error-is-excel-lock-remedy = Give the table itself: its name is the same without ~$.
error-is-database = a database
error-is-packed = a packed collection
error-is-spreadsheet = a spreadsheet
error-is-zip = a zip without sheets
error-is-zip-remedy = If the table is in it, unpack it first, and give the table alone.
error-is-not-text = not text
error-is-web-page = a web page
error-is-json = a file that programs exchange (JSON)
error-is-key = a key in words
error-is-writing = writing, not rows and columns
error-is-lined-up = text whose columns are lined up with spaces
error-is-lined-up-remedy = Put a comma between the cells, or type them into a spreadsheet: one kind a row.
error-is-other-remedy = Give a spreadsheet saved as XLSX or CSV, or paste its cells: one kind a row, its name first, below a row of headings.

## A file with a key, as programs exchange it.
error-key-file-not-ours = { $file } is not a key as Spinney writes it: line { $line }, place { $column }, cannot be read.
error-key-file-not-ours-remedy = Give the key.json that “spinney key” has written, or the key in words.
error-key-file-cut-off = { $file } is damaged: it stops in the middle of line { $line }.
error-key-file-cut-off-remedy = Copy it once more, or make it again with “spinney key”.
error-key-file-unknown = { $file } holds something that this Spinney does not know: “{ $field }”.
error-key-file-unknown-remedy = It may be from a newer Spinney: use that one, or give the key in words, key.txt.
error-key-file-no-key = { $file } holds no key.
error-key-file-no-key-remedy = Give the key.json that “spinney key” has written, or the key in words.
error-key-file-disagree = { $file } says { $number } as { $field }, but { $exact } as { $field }_exact; nobody can tell which is meant.
error-key-file-disagree-remedy = Leave the exact one out, or write the key again rather than changing the file by hand.
error-key-file-line = { $file } has a proof with the line “{ $line }”, which nobody can read.
error-key-file-line-remedy = Write the key again rather than changing the file by hand.
error-key-file-form = { $file } has a proof in form { $form }, which this Spinney cannot read.
error-key-file-form-remedy = Use the newer Spinney, or make the key again from its table.
error-key-file-cost = { $file } has a { $field } that is no cost.
error-key-file-cost-remedy = Write the key again rather than changing the file by hand.

## A line of a journal, and a packed collection.
error-line-newer = A newer Spinney has written this collection: its lines have form { $form }.
error-line-newer-remedy = Open it with the newer Spinney that it was made with.
error-line-damaged = A step of this collection is damaged.
error-line-damaged-remedy = “spinney rescue” saves what can be read into a new file. This one was not changed.
error-packed-not = { $file } is no packed collection.
error-packed-not-remedy = Give a file that “spinney pack” has made.
error-packed-too-large = { $file } is larger than a packed collection may be.
error-packed-too-large-remedy = Copy the collection's own file instead, or take pictures out.
error-packed-cut-off = { $file } is damaged: it stops in the middle.
error-packed-cut-off-remedy = Copy it once more from where it came from. “spinney rescue” saves what can be read.
error-packed-damaged = { $file } is damaged.
error-packed-damaged-remedy = Fetch it once more: it was cut off or changed on the way. “spinney rescue” saves what can be read.

## An empty table that could not be made.
error-template-date = “{ $date }” is no date.
error-template-date-remedy = Write it as year, month and day: 2026-10-03.
error-template-writer = The workbook could not be written: { $said }.
error-template-writer-remedy = This is a mistake in Spinney itself; please tell those who make it.

## The file of a collection that could not be opened or written.
error-kept-missing = There is no file { $file }.
error-kept-missing-remedy = Look whether its name is spelt as on the disk.
error-kept-exists = There is a file { $file } already.
error-kept-exists-remedy = Choose another name, or open the one that is there.
error-kept-no-collection = { $file } is no collection of Spinney's.
error-kept-no-collection-remedy = Give the file of a collection; a table is taken in on the page “Our finds”.
error-kept-newer = { $file } was kept by a newer Spinney.
error-kept-newer-remedy = Open it with the newer Spinney that it was made with.
error-kept-read-only = { $file } may not be written to here.
error-kept-read-only-remedy = Copy the file into a folder of your own and open the copy. Nothing was changed.
error-kept-locked = Another program is using { $file }.
error-kept-locked-remedy = Close the other program, or wait until it is done, and try again. Nothing was changed.
error-kept-full = The disk is full: { $file } cannot grow.
error-kept-full-remedy = Make room on the disk and try again. Nothing was changed, and nothing is lost.
error-kept-damaged = { $file } is damaged.
error-kept-damaged-remedy = “spinney rescue” saves what can be read into a new file. This one was not changed.
error-kept-moved = Another program has changed the collection just now.
error-kept-moved-remedy = Look at it as it is now, and try again.
error-kept-rewritten = Another program has removed something for good just now.
error-kept-rewritten-remedy = Look at it as it is now, and try again.
error-kept-other = { $file } could not be read or written: { $why }.
error-kept-other-remedy = Look whether the disk is still there and has room, and try again.

## A sheet that could not be printed.
error-not-valid = The sheet could not be made into a PDF file that everybody can read: { $said }.
error-not-valid-remedy = Print the page for the phone instead, and report this table and key: the press should have been able to print them.
