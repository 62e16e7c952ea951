### Our finds.

caution = Take care!
finds-empty = What did you find? Lay it out, then type the names below, one a line, or drop in pictures. A find without a name goes by a letter until somebody knows it.
finds-not-named = not named yet
finds-drawn-leaf = This is one of its leaves, drawn in lines from a scan.
finds-drawn-beside = This drawing of one of its leaves is kept. The photograph stays in front of it, on the screens, the cards and the phone page.
finds-drawing-away = Take out the drawing
finds-drawn = Drawn from what the table says; not a portrait.
finds-next = What next?
finds-next-second = Add one find more: a key tells at least two apart
finds-go-on-sorting = Go on sorting into heaps
finds-next-try = Try the key
finds-next-print = Print it
finds-open-copy = Open a copy you saved before
finds-share-out = Share out among groups
finds-newcomer = A newcomer: a find that is not in the key
finds-to-heaps = Sort them into heaps
finds-forget = Remove something for good
finds-met = Seen: { $often }
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
finds-long-text-remedy = Say it shorter. Nothing was changed; what you typed is below.
finds-gone = This find is not there any more.
finds-gone-remedy = It was taken out, perhaps in another window. “What we did” brings it back.
finds-paste = Or paste a table: a find a row, headings above
finds-paste-example =
    kind, edge, blade length (mm)
    hazel, toothed, 60-110
finds-table-file = Or a file: CSV, TSV or XLSX
finds-rows = What is each row of it?
finds-rows-kinds = A kind: hazel, lime, ash
finds-rows-leaves = One leaf, shell or animal: hazel, hazel, hazel, lime. Spinney works out the ranges.
finds-several-rows = “{ $kind }” is on { $rows } rows of this table.
finds-several-rows-remedy = Is each row one leaf (or one shell, one animal)? Then choose that below the table on “Our finds”, and take it in again. If it is not, give each kind a name of its own. Nothing was changed.
finds-whose = Whose table is it?
finds-whose-example = group Blue
finds-whose-why = With a name, this table is kept beside the others, and where two tables disagree you are asked. Leave it empty if it decides.
finds-take-table = Take the table in
finds-pasted = What was pasted
finds-no-table = There was nothing new in the table.
finds-no-table-remedy = Paste cells with a row of headings above them, the finds in the first column.
finds-wide-table = A table has at most { $count } columns and 100,000 cells.
finds-wide-table-remedy = Take in the columns that the key needs, one sheet after the other.
finds-not-read = What was not understood
finds-not-read-remedy = Mend it in your table and take it in again, or type it here. “Undo” takes out what came in.
finds-far = Far from the others
finds-far-one = { $kind }, { $about }: { $finds }
finds-far-remedy = Look at each of them again, and say whether it is right, measured wrongly or of another kind. Until then they count.
finds-taken-for = “{ $theirs }” was taken for “{ $ours }”, which is here already. If they are two finds, undo, and give one of them another name.
finds-leaves-here = { $count ->
    [one] 1 leaf of this table is here already and was not added again.
   *[other] { $count } leaves of this table are here already and were not added again.
}
finds-leaves-changed = { $count ->
    [one] 1 of them got what this table says of it now.
   *[other] { $count } of them got what this table says of them now.
}
finds-drawing-moved = Someone changed this drawing in another window.
finds-drawing-moved-remedy = Look at it again, then take it out if you still want to.
finds-no-pictures = { $count ->
    [one] One picture that the table names did not come along. Open the find and add it there.
   *[other] { $count } pictures that the table names did not come along. Open each find and add its picture there.
}
finds-here-already = { $count ->
    [one] “{ $names }” is here already and was not added again. If you found a second one, give it another name.
   *[other] { $names } are here already and were not added again. If you found others, give them other names.
}
finds-one-name = “{ $first }” and “{ $second }” are written almost alike. Are they the same find or two?
finds-one-name-same = The same: lay them together
finds-one-name-two = Two finds: give this one another name
finds-left = { $count ->
    [one] One thing was left as it is here
   *[other] { $count } things were left as they are here
}
finds-left-why = The sheets beside this table say something else there. If that is right, write it down here yourself.
finds-left-about = The head of the sheets
finds-left-one = { $what }, { $field }: here “{ $ours }”, in the sheet “{ $theirs }”
finds-left-more = { $count ->
    [one] and one more thing
   *[other] and { $count } more things
}
finds-unit-differs = “{ $name }” is measured in { $ours } here, and in { $theirs } in this table.
finds-unit-differs-remedy = Give the column another name, or the unit that it has here. Nothing was taken in.
finds-unit-nobody-said = In this table “{ $name }” is measured in { $theirs }. Here it has numbers, and nobody has said in what they are measured.
finds-unit-nobody-said-remedy = Open the column in the table, say what it is measured in, and take this in again. Nothing was taken in.
finds-disagree = { $count ->
    [one] One thing that is seen differently
   *[other] { $count } things that are seen differently
}
finds-disagree-why = Look at the find again. Until somebody decides, the key does not ask about it.
finds-disagree-more = { $count ->
    [one] One thing more is seen differently.
   *[other] { $count } things more are seen differently.
}
finds-says = { $source }: { $text }
saying-one-of = one or more of: { $states }
saying-none-of = { $count ->
    [one] not { $states }
   *[other] none of: { $states }
}
saying-varies = { $count ->
    [one] sometimes { $states }, sometimes not
   *[other] sometimes one or more of: { $states }; sometimes not
}
finds-unlike = { $count ->
    [one] One find that is sorted differently
   *[other] { $count } finds that are sorted differently
}
finds-unlike-why = Keys ask the same words and sort the find differently. Did everybody mean the same? Look at it together; whoever is mistaken puts the card elsewhere.
finds-unlike-put = { $who }: { $side }
finds-right = “{ $text }” is right
finds-otherwise = Or what we see now
finds-write = Write it down
finds-nothing-decided = Nothing was decided.
finds-nothing-decided-remedy = Choose one of the two, or type what you see.
finds-scene = Title, place, season and cautions
finds-title = Title
finds-title-example = Hedge and street walk
finds-place = Where
finds-place-example = Mill Lane
finds-season = When in the year
finds-season-example = early October
finds-part = What must be in the hand
finds-part-example = a twig with leaves
finds-scene-caution = What everybody on the visit must know; it is on every sheet
finds-scene-caution-example = Wash your hands before lunch.
finds-second-language = A second language on the sheets: you type each name and question in it
finds-second-language-example = Polski
finds-before = Before you go: what the adults see to, one line each
finds-before-example = Ask the land's owner.
finds-second-questions = Questions in your own words, the title, a caution, yes and no in the second language: one line each, with = between
finds-second-questions-example = Is it hollow? = Czy jest pusty w środku?
finds-keep = Keep
finds-name = Name
finds-name-help = What pupils call it. Empty: not named yet. A later name changes everywhere.
finds-how-sure = How sure is the name, and who says so?
finds-how-sure-help = For instance “quite sure, the ranger” or “a guess, group Blue”. No children’s names here.
finds-scientific = Scientific name
finds-scientific-help = If you know it.
finds-other-names = Names in other languages or places
finds-other-names-help = Each with its language before it, like this: cy: collen; de: Hasel
finds-second-name = Its name in the second language
finds-second-name-help = It stands below the name on the key, the cards to sort and the page for a phone.
finds-caution = What may hurt
finds-caution-help = It is shown wherever the find is shown.
finds-confirm = How do you make sure at the end?
finds-confirm-help = One sentence that a pupil can check.
finds-how-often = How often do you see it?
finds-how-often-help = Often, sometimes or rarely. What is seen often comes out sooner.
finds-where = Where was it found?
finds-where-help = As precise as you like.
finds-when = When was it found?
finds-when-help = A day, or a season.
finds-which = From which plant?
finds-which-help = So that you can go and look again: “the old one at the gate”.
finds-name-taken = There is a find called “{ $name }” already.
finds-name-taken-remedy = Choose another name. If the two are the same, open one of them and say what it turned out to be.
finds-picture-of = { $kind }, picture { $number }
finds-picture-number = picture { $count }
finds-picture-first = Put first
finds-picture-away = Take out
finds-picture-forget = Remove for good
finds-many-pictures = A find has at most { $count } pictures.
finds-many-pictures-remedy = Take one out first.
finds-table-says = What the table says of it
finds-table-nothing = Nothing yet.
finds-to-table = To the table
finds-merge = It is the same as another find
finds-merge-with = { $kind } turned out to be
finds-merge-why = Its pictures and cells are added where the other has none. “Undo” takes them apart again.
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

### Removing for good.

forget-title = Remove for good
forget-why = “Undo” can bring back whatever was taken out, so it is still in the file. Here it leaves the file as well.
forget-kinds = A find, with its pictures and all that was written about it
forget-taken-out = taken out before
forget-nameless = find number { $number }, without a name
forget-pictures = Pictures that were taken out before
forget-all = All of it
forget-all-link = Remove the whole collection
forget-sure = Yes, remove it for good
forget-keep = Keep everything
forget-no-undo = This cannot be undone.
forget-copies = Copies of the file elsewhere, and sheets that are printed, are not changed by it.
forget-kind-title = Remove { $kind } for good?
forget-kind-goes = { $kind } goes, under all names that it had, from the list, the table, every key and everything that “What we did” remembers.
forget-also = With it goes what turned out to be the same: { $kinds }.
forget-its-leaves = { $count ->
    [one] Its leaf that was kept by itself goes as well.
   *[other] Its { $count } leaves that were kept one by one go as well.
}
forget-its-pictures = { $count ->
    [one] Its picture goes as well.
   *[other] Its { $count } pictures go as well.
}
forget-mentions = { $count ->
    [one] The name was typed in one other place
   *[other] The name was typed in { $count } other places
}
forget-mentions-more = { $count ->
    [one] and one place more
   *[other] and { $count } places more
}
forget-strike = Strike it out there as well
forget-kind-do = Remove { $kind } for good
forget-picture-title = Remove this picture for good?
forget-picture-of = A picture of { $kinds }. It goes from every find that has it.
forget-picture-do = Remove the picture for good
forget-all-title = Remove the whole collection for good?
forget-all-kinds = { $count ->
    [one] One find goes, with its pictures.
   *[other] All { $count } finds go, with their pictures.
}
forget-all-keys = { $count ->
    [0] There is no key yet.
    [one] The key goes.
   *[other] All { $count } keys go.
}
forget-all-lines = { $count ->
    [one] The one thing that “What we did” remembers goes.
   *[other] All { $count } things that “What we did” remembers go.
}
forget-all-do = Remove everything for good
forget-moved = Someone changed the collection in another window.
forget-moved-remedy = Look at the page again, so that you see what goes.
forget-unsure = Nothing was removed.
forget-unsure-remedy = Tick the box to say that you are sure. It cannot be undone.

### Share out.

share-title = Share out among groups
share-why = Each group gets a set of finds that can be told apart, with look-alikes in it, so that there is something to look at closely. Every set begins a key of its own.
share-groups = Groups
share-size = Finds a group
share-again = Share out again
share-name = Whose set?
share-group = Group { $number }
share-names-why = A colour or an animal makes a good name. No children’s names.
share-start = Begin a key for each group
share-pair = { $one } and { $other }
share-alike = { $count ->
    [one] Look closely: { $pair } differ in one thing only.
   *[other] Look closely: { $pair } differ in { $count } things.
}
share-left = In no set: { $kinds }.
share-short = The table cannot tell so many apart in one set: { $count } at most.
share-short-few = There are only { $count } finds, so every set is all of them.
share-not-found = No larger set than { $count } was found. There may be one.
share-never = The table does not tell these apart, so they are never in one set: { $pairs }.
share-never-more = { $count ->
    [one] One more pair is not told apart.
   *[other] { $count } more pairs are not told apart.
}
share-never-remedy = Find a difference, write it into the table, and share out again.
share-too-few = For a set there must be at least { $count } finds.
share-too-many = There are too many finds to compare each with each. Share out a smaller collection.
share-begun = Sets that groups have
share-next = Next: print the sheets for each group, with a number for every find, an empty key to write and a list to tick. Then each group sorts its set into heaps.
share-more = Share out once more
share-to-heaps = Sort into heaps
share-sheets = Sheets for the group
share-file = set-{ $number }.pdf
share-nothing = There was no set to begin a key with.
share-nothing-remedy = Go back and share out again; the finds may have changed.
finds-many-at-once = More than { $count } pictures are not taken in at once.
finds-many-at-once-remedy = Add them in several goes.
