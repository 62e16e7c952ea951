### What could not be done: a table that could not be read, a sheet that could not be printed.

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

## A sheet that could not be printed.
error-not-valid = The sheet could not be made into a PDF file that everybody can read: { $said }.
error-not-valid-remedy = Print the page for the phone instead, and report this table and key: the press should have been able to print them.
