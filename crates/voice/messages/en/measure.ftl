### What was measured in a picture, and what could not be.

## What is measured.
measure-blade-length = blade length
measure-blade-width = blade width
measure-stalk-length = stalk length
measure-blade-area = blade area
measure-perimeter = length around the blade
measure-length-to-width = length to width
measure-stalk-to-blade = stalk to blade
measure-solidity = how full its outline is
measure-roundness = roundness
measure-one = { $what } { $amount }
measure-amount = { $value } ± { $half }{ $unit }

## Pictures.
measure-looking = Measuring { $file } …
measure-looking-at = Measuring: { $done } of { $all } pictures are done …
measure-leaves = { $count ->
    [0] no leaf
    [one] 1 leaf
   *[other] { $count } leaves
}
measure-picture = { $file }: { $leaves }.
measure-leaf = Leaf { $number }
measure-scale-said = At { $dpi } dots per inch, as you said.
measure-scale-of-ruler = At { $dpi } dots per inch, by the ruler in the picture.
measure-scale-of-file = At { $dpi } dots per inch, as the file says.
measure-scale-doubtful = The file says { $dpi } dots per inch. Many programs write that when they do not know. Hold one leaf against a ruler: if the length is wrong, type the right number with --dpi.
measure-scale-of-card = The scale card is in the photograph: laid flat at { $dpi } dots per inch. Its rings are { $off } mm from where they should be.
measure-scale-of-strip = The scale strip is in the photograph: { $dpi } dots per inch. Its rings are { $off } mm from where they should be. It tells little about how the camera was tilted, so lengths may be off by { $unsure } %. Photograph from straight above, and they are less far off.
measure-halved = It is so large that every square of two by two dots was made into one before measuring.
measure-rubbed = It is a rubbing. If the leaf lay with its veins up, you see its underside: on the leaf seen from above, left and right change places.
measure-like-a-rubbing = This looks like a rubbing. Say --rubbing.
measure-no-scale = Shape and ratios only: the file does not say how large a dot is. If it is a scan, type the scanner's setting, such as --dpi 300.
measure-no-scale-camera = Shape and ratios only: a camera took this picture, and a camera does not know how far away the leaf was. Print the scale card, lay the leaves on it and photograph it with all its rings; or scan the leaves.
measure-no-scale-too-large = Shape and ratios only: the file says { $dpi } dots per inch, but then the picture would be { $longer } cm long. Type the scanner's setting, such as --dpi 300.
measure-coarse = These dots are too large to see the edge of a leaf well: teeth may be missing, and lengths are less sure. Scan it again at 300 dots per inch.
measure-no-scale-not-square = Shape and ratios only: the file says that its dots are not square. Scan it with the same setting both ways.
measure-no-scale-rings = Shape and ratios only: the photograph shows rings of a scale card or strip, but too few, or not as they lie on it. Move aside what lies on a ring, lay the paper flat, and photograph all of it again.

## Leaves.
measure-base-guessed = It has no stalk that can be seen, so which end is the base is a guess: the lower one.
measure-holes = It has holes or very light places. They are counted as blade.
measure-faint = It hardly stands out from the ground, so its edge is not sharp. Lay it on a lighter or darker sheet.
measure-two-stalks = It seems to have two stalks: it may be two leaves that touch. Then cut them apart.
measure-was-cut-apart = It touched another leaf and was cut from it. Look at the line between them. If it is one leaf after all, put both together.
measure-cut-apart = { $leaves } touched and were cut apart. Look at the picture with the lines. { $count ->
    [one] If they are one leaf after all, write { $lines } into a file and give it with --mends.
   *[other] If they are one leaf after all, write { $lines } into a file, each on a line of its own, and give it with --mends.
}
measure-part-of = "leaf { $other } is part of leaf { $one }"
measure-mended = Put right by hand.

## Its form.
measure-unlobed = unlobed
measure-lobes = { $count ->
    [one] 1 lobe
   *[other] { $count } lobes
}
measure-like-a-feather = { $what } like a feather
measure-like-a-hand = { $what } like a hand
measure-along-the-midrib = { $what } along the midrib
measure-from-one-place = { $what } from one place
measure-deepest-gap = deepest gap { $depth } ± { $half } % of the way in
measure-leaflets = { $count ->
    [one] 1 leaflet
   *[other] { $count } leaflets
}
measure-leaflet-at-end = one of them at the end
measure-no-leaflet-at-end = none of them at the end
measure-edge-entire = edge smooth
measure-edge-wavy = edge wavy
measure-edge-toothed = edge toothed
measure-edge-double-toothed = edge double-toothed
measure-edge-toothed-or-double = edge toothed (smaller teeth on the teeth cannot be seen in this scan)
measure-edge-spiny = edge spiny (it may prick: look at the points, do not touch them)
measure-edge-unseen = edge too small to see in this scan: scan it at 300 dots per inch or more
measure-edge-rubbed = a rubbing does not show lobes, leaflets or the edge: look at the leaf itself
measure-teeth = teeth: { $left } on the left, { $right } on the right
measure-waves = waves: { $left } on the left, { $right } on the right
measure-teeth-of-leaflets = { $count ->
    [one] 1 tooth on all leaflets together
   *[other] { $count } teeth on all leaflets together
}
measure-per-cm = { $value } ± { $half } in a cm
measure-base-heart-shaped = base heart-shaped
measure-base-cut-off = base as if cut off
measure-base-rounded = base rounded
measure-base-rounded-or-wedge-shaped = base rounded or wedge-shaped
measure-base-wedge-shaped = base wedge-shaped
measure-base-drawn-in = base narrowing down the stalk
measure-base-alike = base about the same on both sides
measure-base-begins-alike = both sides of the base start at about the same height
measure-base-as-wide = both sides of the base are about equally wide
measure-base-lower-left = base reaches further down on the left (by { $value } ± { $half } % of the blade's length)
measure-base-lower-right = base reaches further down on the right (by { $value } ± { $half } % of the blade's length)
measure-base-wider-left = base wider on the left (which has { $value } ± { $half } % of the width)
measure-base-wider-right = base wider on the right (which has { $value } ± { $half } % of the width)
measure-base-sides-unseen = whether both sides of the base are the same can't be told here
measure-tip-drawn-out = tip drawn out to a point
measure-tip-pointed-or-rounded = tip pointed or rounded
measure-tip-pointed = tip pointed
measure-tip-rounded = tip rounded
measure-tip-notched = tip notched
measure-angle = { $what } ({ $value } ± { $half }°)
measure-widest = widest { $value } ± { $half } % of the way up
measure-veins = side veins: { $left } on the left, { $right } on the right
measure-veins-opposite = side veins in pairs
measure-veins-alternate = side veins in turn, left and right
measure-veins-pairs-unseen = whether side veins are in pairs can't be told here
measure-veins-unseen = side veins can't be seen clearly in this scan

## What is no leaf.
measure-left-out = Not measured: { $what }.
measure-cut-off = { $count ->
    [one] 1 thing that is only partly in the picture (lay it further in and take the picture again)
   *[other] { $count } things that are only partly in the picture (lay them further in and take the picture again)
}
measure-on-strip = { $count ->
    [one] 1 thing that lies over the scale strip (move it off and take the picture again)
   *[other] { $count } things that lie over the scale strip (move them off and take the picture again)
}
measure-label = { $count ->
    [one] 1 label or card
   *[other] { $count } labels or cards
}
measure-faint-things = { $count ->
    [one] 1 thing that hardly stands out from the ground
   *[other] { $count } things that hardly stand out from the ground
}
measure-speck = { $count ->
    [one] 1 speck or bit of writing
   *[other] { $count } specks or bits of writing
}

## Pictures in which nothing can be measured.
measure-not-read = { $file } is not a picture that can be read here, or it is damaged.
measure-not-read-remedy = Save it as PNG or JPEG. PDF files, which many copiers write, are not read.
measure-too-large = { $file } is too large.
measure-too-large-remedy = Scan it at 300 dots per inch, or scan part of it: { $most } million dots are read at most.
measure-nothing-there = Nothing stands out from the ground in { $file }.
measure-nothing-there-remedy = Lay the leaves on a plain sheet that is much lighter or darker than they are.

## Mends: what a person says of leaves that were found otherwise.
mend-no-leaf = leaf { $leaf } is no leaf
mend-a-leaf = what was left out is a leaf
mend-two = leaf { $leaf } is cut in two
mend-part-of = leaf { $part } is part of leaf { $leaf }
mend-base = the blade of leaf { $leaf } begins elsewhere
mend-tip = the tip of leaf { $leaf } is elsewhere
mend-length = there is a ruler of { $mm } mm
mend-no-such-leaf = There is no leaf { $leaf }, or no longer.
mend-no-such-leaf-remedy = Look at the numbers in the picture with the lines.
mend-nothing-there = Nothing was left out at that place.
mend-nothing-there-remedy = Choose a place inside the thing that is a leaf. What touches another leaf must be cut from it.
mend-not-whole = Not all of it can be seen in the picture, so nobody can tell how large it is.
mend-not-whole-remedy = Lay it further in, or off the scale strip, and take the picture again.
mend-no-length = That cannot be: the places are too near each other, or the length does not fit them.
mend-no-length-remedy = Choose two places of a ruler that are far apart, and type how many mm are between them.
mend-not-across = The line does not go right across leaf { $leaf }.
mend-not-across-remedy = Choose two places on its edge, one at each end of where the leaves touch.
mend-part-of-itself = You said that leaf { $leaf } is part of leaf { $leaf }.
mend-part-of-itself-remedy = Choose the number of another leaf.
mend-far-off = That place is far from leaf { $leaf }.
mend-far-off-remedy = Choose a place on the leaf.
mend-in-line = { $file }, line { $line }, “{ $text }”:
mend-line = { $file }, line { $line }: “{ $text }” is not a mend that is known.
mend-line-remedy = Write a line such as “leaf 3 is no leaf”, “at 812 440 is a leaf”, “leaf 5 is two leaves between 120 40 and 180 300”, “leaf 7 is part of leaf 6”, “leaf 4 begins at 120 340”, “leaf 4 ends at 100 20” or “from 40 60 to 1221 60 is 100 mm”.
