### Print.

print-title = Print
print-no-key = There is nothing to print yet: first a key.
print-nothing-asked = There is nothing to print yet: this key has no question. Sort the finds into heaps first, or let the rest be found there.
print-set-sheets = The sheets for the group are for the sorting: a number for every find, an empty key to write, strips to tick.
print-draft = This key loses a find on the way, so every page says DRAFT. The key page shows what to mend.
print-today = Everything for today
print-today-about = key, chart, labels, slips and strips in one file, with a page for the adult that says how many copies of what
print-key-pages = The key
print-key-pages-about = numbered questions, cautions and the words: one a group
print-chart = The chart
print-chart-about = the whole key as a tree, for the wall: A3 if you can
print-try-out = Try-out sheets
print-try-out-about = number labels, slips, strips to tick, an empty key and the answers for the adult
print-paper = Paper
print-show = Show it
print-files = Other files
print-phone = The page for a phone (HTML, needs no network)
print-text = The key as text
print-json = The key as JSON, for other programs
print-csv = The table as CSV, for a spreadsheet
print-download = Get the PDF
print-pages = Pages
print-page = page { $page } of { $of }
print-before = Page before
print-after = Next page
