### The screen "Measure leaves": a scan, its leaves, and what goes into the table.

## The screen: choosing a picture.
scan-title = Measure leaves
scan-why = Lay the leaves on a flatbed scanner, apart from each other and away from the edges. Scan them at 300 dots per inch, and choose the picture here.
scan-scan = A scan or a photograph from straight above ({ $formats })
scan-drop-here = … or drop it here.
scan-dpi = Dots per inch, if you know it
scan-dpi-why = Most scans say it themselves. Then leave this empty.
scan-no-scanner = No scanner? Print the scale card at 100 %, lay the leaves between its rings, and photograph the whole sheet from above.
scan-card-a4 = Scale card (A4, PDF)
scan-card-letter = Scale card (US Letter, PDF)
scan-rubbing = It is a rubbing: crayon or pencil over a leaf under paper
scan-do = Measure
scan-not-kept = The picture is not kept, nor the name of its file. What is kept is what you take: each leaf with its kind, its number, its lengths and a small picture, and the plant, place and day that you type; and one leaf of each kind as the picture of the kind.
scan-no-picture = There is no picture to measure.
scan-no-picture-remedy = Choose a scan saved as PNG or JPEG.
scan-odd-dpi = “{ $typed }” is not a number of dots per inch.
scan-odd-dpi-remedy = Type the scanner's setting, such as 300.
scan-many = { $found } leaves were found. This screen takes { $count } at a time.
scan-many-remedy = Scan them in two goes.
scan-doubtful = The file says { $dpi } dots per inch. Many programs write that when they do not know. Hold one leaf against a ruler: if the length is wrong, type the right number below.
scan-no-scale = Shape and ratios only: the file does not say how large a dot is. If it is a scan, type the scanner's setting below, such as 300.
scan-too-large = Shape and ratios only: the file says { $dpi } dots per inch, but then the picture would be { $longer } cm long. Type the scanner's setting below, such as 300.

## The screen: naming the leaves.
scan-found = { $count ->
    [0] No leaf was found
    [one] 1 leaf was found
   *[other] { $count } leaves were found
}
scan-like-a-rubbing = This looks like a rubbing. Choose the picture again, and tick “It is a rubbing”.
scan-no-leaf = Lay the leaves on a plain sheet, apart from each other and away from the edges, and scan them again.
scan-naming = What kind is each leaf? Type a name and press Enter to go on. Leave a field empty, or type ?, to leave that leaf out.
scan-name = Leaf { $number }: which kind?
scan-other-dpi = Type another number of dots per inch
scan-scale-take = Use it
scan-ruler = There is a ruler in the picture
scan-ruler-how = Type two marks of the ruler that are far apart, each as two numbers: dots to the right and down. The picture must be taken from straight above.
scan-ruler-one = One mark
scan-ruler-other = The other mark
scan-ruler-mm = Between them, in mm
scan-odd-ruler = “{ $typed }” does not say where a ruler lies and how long it is.
scan-odd-ruler-remedy = Click on two marks of the ruler, and type how many mm are between them.
scan-found-at = All of these leaves
scan-where = Where were they found?
scan-when = When were they found?
scan-called = number { $number } in a scan
scan-here-already = { $count ->
    [one] 1 leaf of this scan is here already and is not taken again.
   *[other] { $count } leaves of this scan are here already and are not taken again.
}
scan-all-here = All of these leaves are here already.
scan-all-here-remedy = Choose another scan, or go to “Leaves one by one” to change something about them.
scan-plant = Which plant is it from?
scan-part = Sun, shade or sucker leaf?
scan-part-sun = sun
scan-part-shade = shade
scan-part-sucker = sucker
scan-draw = Use the drawing of leaf { $number } instead of its photograph. A drawing copies well in grey.
scan-draw-instead = Use the drawing of leaf { $number } instead of the one it has.
scan-draw-beside = Keep this drawing of leaf { $number } as well. The photograph stays in front.
scan-more = Which plant, and more measures
scan-look = Go on: what goes into the table?
scan-another = Choose another picture
scan-picture-alt = { $file }, with the outline, the midrib line, the width and the number of each leaf drawn into it

## The screen: putting a leaf right.
mend-open = Put leaf { $number } right
mend-so-far = Put right: { $mends }.
mend-undo = Take the last one back
mend-is-a-leaf = { $count ->
    [one] What was left out is a leaf
   *[other] Something that was left out is a leaf
}
mend-letters = What was left out has letters in the picture.
mend-take = { $letter } is a leaf
mend-title = Leaf { $number }: what is not right?
mend-how = Type the number of a place on the outline, 1 to { $count }.
mend-click = Or click on a field, then on its place in the picture.
mend-picture-alt = Leaf { $number }, large, with numbers around its outline, clockwise from the top
mend-base-elsewhere = Its blade begins elsewhere
mend-base-where = Where the stalk joins the blade
mend-base-do = It begins there
mend-tip-elsewhere = Its tip is elsewhere
mend-tip-where = Where the tip is
mend-tip-do = The tip is there
mend-touching = It is two leaves that touch
mend-one-side = A place on the edge, at one end of where they touch
mend-other-side = The same at the other end
mend-two-do = Cut them apart
mend-part = It is a part of another leaf
mend-part-which = Of which?
mend-part-do = Join them
mend-none = It is no leaf
mend-none-do = Leave it out
mend-back = Back to the leaves
mend-odd-place = “{ $typed }” is not a place on this leaf.
mend-odd-place-remedy = Type a number from 1 to { $count }, or click on the picture.
mend-many = { $count } things were put right in this picture, and more are not taken.
mend-many-remedy = Take the leaves in, and scan the others again.
mend-nothing-said = Nothing was said of any leaf.
mend-nothing-said-remedy = Choose what is not right, and press its button.

## The screen: what is taken.
scan-look-title = What goes into finds and table
scan-look-no-scale = Nobody knows how large a dot is, so no length goes into the table. The names and pictures do.
scan-leaves-of-kind = { $count ->
    [one] 1 leaf: { $numbers }.
   *[other] { $count } leaves: { $numbers }.
}
scan-new-kind = A new kind.
scan-known-kind = This kind is there already.
scan-becomes-picture = Leaf { $number } becomes its picture.
scan-range = { $count ->
    [one] { $range } mm, from 1 leaf.
   *[other] { $range } mm, from { $count } leaves.
}
scan-joined = ({ $before } was measured before, { $now } now.)
scan-one-leaf = One leaf is not a range: measure more leaves of this kind.
scan-typed = Somebody typed “{ $typed }”, and that stays. Tick this to use what was measured instead.
scan-others = { $who } says: { $text }. Where that differs, the table shows both and you choose.
scan-does-not-fit = The column of this name does not hold lengths, so nothing goes into it.
scan-looks-title = How the leaves look
scan-looks-why = Each tick becomes a column of the table.
scan-looks-ticked = We ticked the questions that tell these kinds apart, and those that have a column already.
scan-looks-of-one = We ticked what most keys ask about leaves, and what has a column already.
scan-looks-compare = Compare with the real leaves: the program can be wrong, and a scan does not show whether a leaf pricks.
scan-looks-before = (before: { $before })
scan-fill-in-table = Fill it in yourselves in the table
scan-other-words = The column “{ $column }” uses other words, so nothing goes into it.
scan-left-out-names = { $count ->
    [one] 1 leaf has no name and is left out.
   *[other] { $count } leaves have no name and are left out.
}
scan-take = Take into finds and table
scan-back = Back to the names
scan-none-named = No leaf has a name yet.
scan-none-named-remedy = Type the kind of at least one leaf.
scan-moved = Something changed in another window: here is what would be taken now.
scan-moved-remedy = Look at it again, then take it.
scan-source = measured
scan-column-width = blade width
scan-link = Measure leaves in a scan
scan-or-link = Or measure leaves in a scan, and name them there
