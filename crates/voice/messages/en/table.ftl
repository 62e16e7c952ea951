### The table: kinds by characters.

table-no-kinds = What do you have? Add the kinds first, one a row; then something to look at on each of them, such as “leaf edge”.
table-no-characters = Add something to look at on every kind, such as “leaf edge”, “number of leaflets” or “blade length (mm)”.
table-help = What may be typed in a cell
table-help-word = A word for what you see. The same word for the same thing, all down the column.
table-help-varies = It varies: some of this kind are like this and some like that.
table-help-counted = You counted: eight were lobed and two were not.
table-help-range = Measured, from the smallest to the largest.
table-help-count = Counted: five, six or seven.
table-help-unknown = Nobody knows yet. The same as an empty cell, but somebody has thought of it.
table-help-not-there = This kind does not have it: a leaf in one piece has no leaflets.
table-help-keys = With a keyboard: arrows go from cell to cell, Tab to the next one, Enter goes down, typing writes over it, F2 writes on, Escape brings back what was there, Home and End go to the ends of a row. A block copied from a spreadsheet can be pasted into a cell, and fills the cells from there on.
table-choices = Choose cells, or write as a group
table-show = Show
table-show-all = all cells
table-show-blank = only where nobody knows
table-show-differ = only where people differ
table-show-whole = Show the whole table
table-of-kind = Kind
table-every-kind = every kind
table-of-character = What to look at
table-every-character = everything
table-as = Write as (a group; empty: the table itself)
table-as-told = You see and write what { $who } says. It never overwrites the table or another group.
table-choose = Show these
table-differ-count = { $count ->
    [one] in 1 cell people differ
   *[other] in { $count } cells people differ
}
table-none-blank = No cell is blank here.
table-none-differ = Nobody contradicts anybody here.
table-none = There is no such cell.
table-keep = Keep what I typed
table-not-kept = What you typed last could not be kept: Spinney does not answer. It is still in its cells; press “Keep what I typed” once Spinney runs again.
table-not-pasted = Not all of what you pasted fits into the table. Add rows and columns first, then paste it again.
table-to-margin = Down to what is not told apart yet
table-kind = Kind
table-caption = { $kinds }, { $characters }
table-caption-kinds = { $count ->
    [one] 1 kind
   *[other] { $count } kinds
}
table-caption-some = { $count ->
    [one] 1 of { $all } kinds
   *[other] { $count } of { $all } kinds
}
table-caption-characters = { $count ->
    [one] 1 thing to look at
   *[other] { $count } things to look at
}
table-in = in { $unit }
table-kinds-before = The kinds before these
table-kinds-after = { $count ->
    [one] 1 kind more
   *[other] { $count } kinds more
}
table-clash = just changed
table-clash-told = Someone wrote “{ $theirs }” here while you typed “{ $mine }”. Which is it?
table-clash-cleared = Someone emptied this cell while you typed “{ $mine }”. Which is it?
table-clash-mine = Write mine
table-clash-leave = Leave theirs
table-many-clashes = { $count } of these cells were changed in another window while you typed.
table-many-clashes-remedy = What you typed is below. Go back, look at what is written now, and type again what is still missing.
table-differ = they differ
table-take = Take “{ $text }”
table-varies = It varies: “{ $text }”
table-look-again = Look again (?)
table-who = { $count ->
    [one] one group
   *[other] { $count } groups
}
table-itself = The table
table-says = { $who }: “{ $text }”
table-by-heaps = (by its heaps)
table-too-long = That is longer than { $count } letters.
table-too-long-remedy = Say it shorter. Longer notes belong to the finds.
table-margin-empty = As soon as there are kinds, this says what is not told apart yet, and where to look next.
table-alike = Not told apart yet
table-none-alike = Every two kinds can be told apart.
table-alike-count = { $count ->
    [one] One pair cannot be told apart by this table:
   *[other] { $count } pairs cannot be told apart by this table:
}
table-pair = { $one } and { $other }
table-told-by-heaps = The table cannot tell these apart, but a group did, by heaps:
table-told-pair = { $group } tells { $one } and { $other } apart: “{ $words }”
table-hope-one = One blank cell may tell them apart.
table-hope-several = Several blank cells together may tell them apart.
table-hope-new = Look for a difference that is not in the table.
table-more-pairs = { $count ->
    [one] and one pair more
   *[other] and { $count } pairs more
}
table-look-at = Where a look helps most
table-look-cell = { $kind }, { $character }
table-look-parts = It may tell it apart from { $kinds }.
table-look-with-others = Together with other blank cells it may tell it apart from { $kinds }.
table-look-secures = It may give a second difference from { $kinds }.
table-and-more = { $kinds } and { $count } more
table-to-mend = What to mend
table-nothing-to-mend = Nothing.
table-cells-to-mend = { $count ->
    [one] One cell is worth a look:
   *[other] { $count } cells are worth a look:
}
table-new-character = Something more to look at
table-add-character = Add a column
table-new-kind = One kind more
table-add-kind = Add a row
table-full = A table holds at most { $count } things to look at.
table-full-remedy = Take out what no key asks about.
table-no-name = It needs a name.
table-no-name-remedy = Say what to look at: “leaf edge”, “number of leaflets”.
table-name-taken = “{ $name }” is in the table already.
table-name-taken-remedy = Give it another name, or use the column that is there.
table-no-state = A state needs a word.
table-no-state-remedy = Type a word of at most { $count } letters.
table-gone = That is not in the table any more.
table-gone-remedy = It was taken out in another window. Undo brings it back.
table-field-clash = Someone wrote “{ $theirs }” there while you typed “{ $mine }”.
table-field-clash-remedy = Go back, look at what is written now, and type yours again if it is still right.
table-field-name = Name
table-field-question = How to ask
table-help-question = Put {"{}"} where the state or the number goes: “Is the leaf edge {"{}"}?”
table-field-second-question = How to ask in the second language
table-help-second-question = Put {"{}"} where the state goes. For numbers write “or more” yourself, and {"{}"} for the number: “Czy ogonek ma {"{}"} lub więcej?”
table-field-values = What its cells hold
table-help-values = Empty: as its cells look. Say “words” where numbers are only names.
table-field-states = Its states, in their order
table-help-states = With commas between. Empty: the words that are written in the cells.
table-field-second-states = Its states in the second language
table-help-second-states = Like this: toothed = ząbkowany, smooth = gładki
table-field-in-order = The states have an order
table-help-in-order = Small, middling, large: a question never takes the two ends against the middle.
table-field-unit = Measured in
table-field-gap = Safety margin
table-help-gap = How far a question's number stays away from every range, in the same unit.
table-field-difficulty = How hard to see
table-field-seen-on = Seen on
table-field-season = Seen in
table-field-instrument = Needs
table-field-by-touch = Has to be touched
table-field-applies-when = Only ask this when …
table-help-applies-when = For example: form = feather.
table-field-read-right = Read right, in per cent
table-help-read-right = How many of a hundred people see it right, if somebody counted.
table-field-words = Words to know
table-help-words = With commas between: “leaflet, bud”.
table-field-ratio = One length over another
table-help-ratio = “stalk length / blade length”
table-not-said = nobody said
table-more-fields = More about it
table-keep-character = Keep this
table-asks = It asks, for instance: “{ $question }”
table-kept-in = It is typed in “{ $typed }” here. Questions and sheets say “{ $kept }”.
table-states = Its states
table-rename-help = Another word is written everywhere: in every cell, and in every question that asks for it.
table-state-of = { $count ->
    [one] “{ $state }”, 1 kind
   *[other] “{ $state }”, { $count } kinds
}
table-rename = Write so
table-take-out = Take this column out
table-close-panel = Close this sheet
table-word-yes = yes
table-word-no = no
table-word-easy = easy, at arm's length
table-word-fair = takes a close look
table-word-hard = takes practice or a lens
table-word-count = a number, counted
table-word-ratio = one length over another
table-word-in = inches
table-word-ft = feet
table-word-words = words
table-word-counts = numbers, counted
table-word-measure = a measure
table-word-tree = a whole tree
table-word-twig = a twig with leaves
table-word-leaf = one leaf
table-word-rubbing = a rubbing
table-word-photograph = a photograph
table-word-winter-twig = a bare twig
table-word-tray = a tray with water
table-word-spring = spring
table-word-summer = summer
table-word-autumn = autumn
table-word-winter = winter
table-word-eyes = eyes and fingers
table-word-lens = a lens
table-word-ruler = a ruler
table-lay-over = Lay a group's table over this one
table-lay-over-help = Their table is kept separately. Where it differs from yours, you choose. Kinds and columns that are not here yet are added.
table-lay-over-who = Who says so? Empty: the table itself, and what is written there is replaced
table-lay-over-paste = Paste their table, with its headings
table-lay-over-file = Or a file (CSV or XLSX)
table-lay-over-button = Lay it over
table-pasted = What was pasted
table-nothing-pasted = There is nothing new in it.
table-nothing-pasted-remedy = Paste a table with a row of headings, and the kinds in the first column.
stood-cell = Someone changed { $character } of { $kind } in another window. It now says: { $says }
stood-cell-remedy = Nothing was written. Go back, look at what it says now, and decide again.
stood-nothing = nothing
table-own-words = Worded by hand, so these questions keep their words:
table-own-words-one = “{ $question }” ({ $key })
