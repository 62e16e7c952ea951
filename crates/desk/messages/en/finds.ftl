### Our finds.

caution = Take care!
finds-empty = What did you find? Lay it out, then type the names below, one a line, or drop in pictures. A find without a name goes by a letter until somebody knows it.
finds-not-named = not named yet
finds-next = What next?
finds-share-out = Share out among groups
finds-newcomer = A newcomer: a find that is not in the key
finds-to-heaps = Sort them into heaps
finds-forget = Remove something for good
finds-met = met: { $often }
finds-all = All our finds
finds-add = Add finds
finds-names = Names, one a line
finds-names-example =
    hazel
    oak
finds-pictures = Or pictures, one find each
finds-more-pictures = More pictures
finds-drop-here = … or drop them here.
finds-dropped = Pictures are ready to be added.
finds-add-button = Add
finds-add-pictures = Add these pictures
finds-too-many = A collection holds at most { $count } kinds.
finds-too-many-remedy = Begin a second collection, for instance one a habitat.
finds-nothing-new = There was no new name and no picture.
finds-nothing-new-remedy = Type a name that is not in the list yet, one a line, or choose a picture.
finds-long-line = Line { $line } is longer than { $count } letters.
finds-long-line-remedy = One name a line: begin a new line for every find.
finds-long-text = “{ $start }…” is longer than { $count } letters.
finds-long-text-remedy = Say it shorter. Nothing was changed; what you typed stands below.
finds-gone = This find is not there any more.
finds-gone-remedy = It was taken out, perhaps in another window. “What we did” brings it back.
finds-paste = Or paste a table: a find a row, headings above
finds-paste-example =
    kind, edge, blade length (mm)
    hazel, toothed, 60-110
finds-table-file = Or a file: CSV, TSV or XLSX
finds-whose = Whose table is it?
finds-whose-example = group Blue
finds-whose-why = With a name, this table lies beside the others, and where two tables disagree you are asked. Leave it empty if it decides.
finds-take-table = Take the table in
finds-pasted = The pasted table
finds-no-table = There was nothing new in the table.
finds-no-table-remedy = Paste cells with a row of headings above them, the finds in the first column.
finds-table-error = { $error }
finds-wide-table = A table has at most { $count } columns and 100,000 cells.
finds-wide-table-remedy = Take in the columns that the key needs, one sheet after the other.
finds-disagree = { $count ->
    [one] One thing that two tables see differently
   *[other] { $count } things that two tables see differently
}
finds-disagree-why = Look at the find again. Until somebody decides, the key does not ask about it.
finds-disagree-more = { $count ->
    [one] One thing more is seen differently.
   *[other] { $count } things more are seen differently.
}
finds-says = { $source }: { $text }
finds-right = “{ $text }” is right
finds-otherwise = Or what we see now
finds-write = Write it down
finds-nothing-decided = Nothing was decided.
finds-nothing-decided-remedy = Choose one of the two, or type what you see.
finds-scene = Title, place and season
finds-title = Title
finds-title-example = Hedge and street walk
finds-place = Where
finds-place-example = Mill Lane
finds-season = When in the year
finds-season-example = early October
finds-part = What must be in the hand
finds-part-example = a twig with leaves
finds-scene-caution = What may hurt there, and what to do before you go
finds-scene-caution-example = Wash your hands afterwards.
finds-keep = Keep
finds-name = Name
finds-name-help = What pupils call it. Empty: not named yet. A later name changes everywhere.
finds-how-sure = How sure is the name, and who says so?
finds-how-sure-help = For instance “quite sure, the ranger” or “a guess, group Blue”. No children’s names here.
finds-scientific = Scientific name
finds-scientific-help = If somebody knows it.
finds-other-names = Names in other languages or places
finds-other-names-help = Each with its language before it, like this: cy: collen; de: Hasel
finds-caution = What may hurt
finds-caution-help = It stands wherever the find stands.
finds-confirm = How do you make sure at the end?
finds-confirm-help = One sentence that a pupil can check.
finds-how-often = How often do you meet it?
finds-how-often-help = A number against the others, or often, sometimes, rarely. What is met often comes out sooner.
finds-where = Where was it found?
finds-where-help = As precise as you like.
finds-when = When was it found?
finds-when-help = A day, or a season.
finds-which = From which plant?
finds-which-help = So that somebody can go and look again: “the old one at the gate”.
finds-name-taken = There is a find called “{ $name }” already.
finds-name-taken-remedy = Choose another name. If the two are the same, open one of them and say what it turned out to be.
finds-picture-of = { $kind }, picture { $number }
finds-picture-number = picture { $count }
finds-picture-first = Put first
finds-picture-away = Take away
finds-picture-forget = Remove for good
finds-many-pictures = A find has at most { $count } pictures.
finds-many-pictures-remedy = Take one away first.
finds-table-says = What the table says of it
finds-table-nothing = Nothing yet.
finds-to-table = To the table
finds-merge = It is the same as another find
finds-merge-with = { $kind } turned out to be
finds-merge-why = Its pictures and cells go over where the other has none. “Undo” takes them apart again.
finds-merge-do = Lay them together
finds-split = It is two kinds
finds-split-name = The second is called (empty: not named yet)
finds-split-pictures = These pictures go with the second
finds-split-why = The second begins with what the table says of the first. Then write down where they differ.
finds-split-do = Make two of it
finds-away = Take it out
finds-away-why = It leaves the table and every key. “Undo” brings it back.
finds-away-do = Take { $kind } out
finds-forget-kind = Or remove it for good
picture-not-read = { $file } could not be read as a picture.
picture-too-large = { $file } has more pixels than are read here.
picture-remedy = Give a JPEG or PNG file of at most 40 million pixels. Where and when it was taken is not kept.
