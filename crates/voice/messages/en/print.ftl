### Print.

print-title = Print
print-second-type = Type what is missing
second-whole = Every name, every question, the title and the cautions are there in the second language too ({ $language }).
second-names-missing = { $count ->
    [one] 1 kind has no name in the second language yet ({ $language }). Only its first name is printed.
   *[other] { $count } kinds have no name in the second language yet ({ $language }). Only their first names are printed.
}
second-questions-missing = { $count ->
    [one] 1 question has no text in the second language yet ({ $language }). Only the first is printed.
   *[other] { $count } questions have no text in the second language yet ({ $language }). Only the first is printed.
}
second-texts-missing = { $count ->
    [one] 1 other text (the title, a caution, yes or no) is not there in the second language yet ({ $language }). Only the first is printed.
   *[other] { $count } other texts (the title, cautions, yes and no) are not there in the second language yet ({ $language }). Only the first is printed.
}
second-not-printed = { $count ->
    [one] 1 text in the second language ({ $language }) is left out on paper: the typeface lacks { $letters }. The page for a phone has it.
   *[other] { $count } texts in the second language ({ $language }) are left out on paper: the typeface lacks { $letters }. The page for a phone has them.
}
print-no-key = There is nothing to print yet: first a key.
print-nothing-asked = There is nothing to print yet: this key has no question. Sort the finds into heaps first, or let the rest be found there.
print-set-sheets = The sheets for the group are for the sorting: a number for every find, an empty key to write, a list to tick.
print-draft = This key loses a find on the way, so every page says DRAFT. The key page shows what to mend.
print-today = Everything for today
print-today-about = key, chart, words, labels and a list for trying it out in one file, with a page for the adult that says how many copies of what
print-short-key = The key on few pages
print-short-key-about = two columns, no boxes to stick things in: one for each group. It is in everything for today
print-pocket = Key for the pocket
print-pocket-about = one sheet of paper, folded to eight small pages in small letters: one for each child
print-key-pages = The key
print-key-pages-about = numbered questions, cautions and the words: one for each group
print-chart = The chart
print-chart-about = the whole key as a tree, for the wall: A3 if you can
print-words = Words to look at
print-words-about = each word of the key as a drawing, beside what people mix it up with: for the wall or a group's table
print-word-cards = Words as cards
print-word-cards-about = eight cards to a page, to cut out: each word with its drawing and its plain words
print-try-out = Try-out sheets
print-try-out-about = number labels, a list to fill in, an empty key and the answers for the adult
print-cards = Cards to sort
print-cards-about = a picture of each kind with its name below, eight to a page: to cut out and lay on two heaps
print-cards-backs = Cards with the name on the back
print-cards-backs-about = the same, with the name behind the picture: print on both sides, turned along the long edge
print-cards-numbers = Cards: what is it?
print-cards-numbers-about = pictures with a number and no name, and a list of answers for the adult
print-ruler = Ruler of today
print-ruler-about = a strip to cut out with exactly the lengths that this key asks for, and a line to check the printer
print-measuring = Measuring sheet
print-measuring-about = rows for six finds of a kind, with the least, the most and the range to type in
print-scale-card = Scale card
print-scale-card-about = lay leaves on it and photograph them: Spinney then knows how large they are
print-scale-strip = Scale strip
print-scale-strip-about = lies in a pond tray or beside it: Spinney then knows how large things in a photograph are
print-rubbing = Rubbings
print-rubbing-about = how to make one, and a frame with millimetres for it
print-album = Album
print-album-about = a place for each kind, as large as its largest leaf: to stick leaves and rubbings into
print-wall = Chart for the wall
print-wall-about = the key as a tree with places as large as real leaves, on several sheets to glue together
print-floor = Signs for the floor
print-floor-about = each question with two large arrows, to lay the key on the ground and walk along it
print-trail = Posts for a trail
print-trail-about = one question a sheet, to hang up along a path, and a plan for the adult
print-indented = Indented key
print-indented-about = the whole key down the page, each answer further in: for people who know such keys from books
print-looks = Strips to lay
print-looks-about = one strip for each thing that can be seen, to lay beside the names: there is no first question
print-holes = Cards with holes
print-holes-about = one card for each thing that can be seen, to punch, lay on each other and hold against the light
print-visit = The visit
print-visit-about = what may hurt, what to fill in, usual advice with its sources, what to take, a plan; and a card for each helping adult
print-lessons = Lessons
print-lessons-about = a warm-up with pasta, a key half done, a key with three faults and the answers, add one kind, newcomer slips, what a child can do now, a page for home
print-of-key = The key
print-of-words = Its words
print-of-sorting = To sort and to try out
print-of-measuring = To measure and to collect
print-of-large = Large: wall, floor and path
print-of-forms = The key in other forms
print-of-around = Before, beside and after the walk
print-paper = Paper
print-ink = Ink
print-ink-colour = colour
print-ink-black = black only, saves ink
print-letters = Letters
print-letters-usual = as usual
print-letters-large = large print
print-places = Room for a leaf
print-places-measured = as measured
print-places-about = How long a leaf each place of the album and of the chart for the wall has room for: 12 cm, or 120 in mm. Left empty, each place is as large as the largest leaf in the table.
print-places-not = That is no length for a place.
print-places-not-remedy = Type a length from { $least } to { $most } mm, such as 12 cm.
print-wall-size = Chart for the wall
print-wall-needed = as large as it needs
print-wall-a2 = exactly A2 (42 × 59.4 cm)
print-wall-a1 = exactly A1 (59.4 × 84.1 cm)
print-wall-no-room = This key has no room on a chart of that size.
print-wall-no-room-remedy = Choose A1, or let the chart be as large as it needs.
print-wall-no-room-a1 = This key has no room on a chart of that size.
print-wall-no-room-a1-remedy = Let the chart be as large as it needs.
print-not-large-lengths = This sheet stays as it is: lengths on it are true to size, and larger letters would change them.
print-not-large-pocket = This sheet stays as it is: eight pages from one sheet of paper have no room for large print. “The key on few pages” has it.
print-not-large-already = This sheet stays as it is: its questions are large already.
print-not-large-adults = This sheet stays as it is: it is for the adults.
print-not-large-form = This sheet stays as it is: there is no large print of it yet.
print-children = How many children?
print-groups = How many groups?
print-count = Count the copies
print-count-about = The first page of “Everything for today” then says how many copies of each sheet you need.
print-not-a-number = The number of children or groups could not be read.
print-not-a-number-remedy = Type a whole number from 1 to { $most }, or leave it empty.
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
print-tablets = Onto the children's tablets
print-tablets-get = Get the page for tablets
print-tablets-cable = By cable: join the tablet to this machine and copy the file into its downloads.
print-tablets-stick = By memory stick: copy the file onto it, and from there onto each tablet.
print-tablets-web = By web space: put the file on the school's own pages, and write the address on the board.
print-tablets-open = Open it on the tablet by a touch. It needs no network, and asks nobody's name.
