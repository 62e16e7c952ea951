### The sheets that are cut out, laid on the ground, hung up or measured with.

sheet-drawing-of = Drawing of { $kind }, made from the table
sheet-drawing-unnamed = A drawing, made from the table: what is it?
sheet-drawing-of-leaf = Drawing of a leaf of { $kind }
sheet-drawing-of-leaf-unnamed = A drawing of a leaf: what is it?
sheet-picture-unnamed = A picture: what is it?

## Cards to sort.

sheet-cards = Cards to sort
sheet-cards-numbered = Cards: what is it?
sheet-title-cards = { $title }: cards
sheet-title-cards-backs = { $title }: cards, names on the back
sheet-title-cards-numbered = { $title }: cards without names
sheet-cards-both-sides = Print on both sides, turned along the long edge.
sheet-card-is = It is
sheet-caution-in-key = It carries a caution: read it in the key.
sheet-caution-for-all-in-key = Read what everybody must know before you go: it is in the key.
sheet-cards-answers = Cards: the answers, for the adult
sheet-cards-answers-about = The number on each card, and what it is. Keep this sheet until everybody has guessed.
sheet-column-sure = How to make sure

## A ruler of today, and the measuring sheet.

sheet-ruler = Ruler of today
sheet-title-ruler = { $title }: ruler of today
sheet-ruler-check = First hold a real ruler against this line. Printers shrink: if it is not 10 cm, print again at 100 % (actual size).
sheet-strip-check = First hold a real ruler against the 10 cm line on a strip. Printers shrink: if it is not 10 cm, print again at 100 % (actual size).
sheet-ruler-check-line = This line is 10 cm.
sheet-ruler-how = Cut the strip out. Lay what you measure on it, flat, with its beginning at 0. Does it reach the line with the number of your question?
sheet-ruler-tape = Question { $numbers } asks for { $amount }: take a tape measure.
sheet-ruler-leaf-drawn = A leaf with its lengths: the stalk from the twig to the blade, the blade from there to the tip
sheet-ruler-stalk = leaf stalk
sheet-ruler-blade = blade
sheet-ruler-measured = What we measured
sheet-glue = glue here
sheet-measuring = Measuring sheet
sheet-title-measuring = { $title }: measuring sheet
sheet-measuring-about = Measure six finds of the same kind, small ones and large ones. Write down the least and the most: that is the range to type in.
sheet-measuring-kind = Kind or number:
sheet-measuring-least = least
sheet-measuring-most = most
sheet-measuring-type = type in

## The scale card, to photograph leaves on.

sheet-scale = Scale card
sheet-title-scale = { $title }: scale card
sheet-scale-alone = Leaves, photographed and measured
sheet-scale-lay = Lay leaves flat and apart between the rings. Leave out what carries a caution.
sheet-scale-photograph = Photograph the whole sheet from above: all eight rings in the picture, no shadow of a hand.
sheet-scale-measure = Spinney finds the rings, lays the picture flat and measures each leaf in millimetres.
sheet-scale-rings = Eight rings around the place for the leaves
sheet-strip = Scale strip
sheet-title-strip = { $title }: scale strip
sheet-strip-cut = Cut the strips out, one for each tray. Laminate them first if they will get wet.
sheet-strip-lay = Lay a strip flat in the tray or beside it, as high as what you measure.
sheet-strip-photograph = Photograph from straight above: all six rings in the picture, and what you measure near them.
sheet-strip-rings = Six rings in a line
sheet-strip-ten = 10 cm

## Rubbings.

sheet-rubbing = Rubbings
sheet-title-rubbing = { $title }: rubbings
sheet-rubbing-choose = Choose a firm, dry leaf. Leave out what carries a caution.
sheet-rubbing-lay = Lay it on something hard, vein side up, and this sheet on top.
sheet-rubbing-rub = Hold the paper still. Rub softly with a crayon lying on its side, from the middle outwards.
sheet-rubbing-write = Write down what it is, where it grew and the day.
sheet-rubbing-keep = Keep rubbings flat, with plain paper between them.
sheet-rubbing-picture = Scanned or photographed straight from above, a rubbing can be the picture of its find: open the find and add it there.
sheet-rubbing-rubbed = the rubbing
sheet-rubbing-above = from above
sheet-rubbing-mirror = You rub the underside: from above, left and right change places.
sheet-rubbing-frame = A frame with millimetres along its edges, so that the rubbing keeps its true size
sheet-rubbing-where = Where:
sheet-rubbing-day = Day:

## The chart for a wall.

sheet-wall = Chart for the wall
sheet-title-wall = { $title }: chart for the wall
sheet-wall-size = { $sheets } sheets become a chart { $wide } cm wide and { $high } cm high.
sheet-wall-exact = { $sheets } sheets become a chart of exactly { $paper }: { $wide } cm wide and { $high } cm high.
sheet-wall-cut-out = When all of it is glued, cut along the line around it.
sheet-wall-cut = Cut off what lies to the left of a dashed line, and what lies above one.
sheet-wall-glue = Lay the sheet on its neighbour so that the cut edge meets the dotted line and the short marks meet. Glue it there.
sheet-wall-order = Glue the sheets of a row first, in the order of their numbers. Then glue row to row.
sheet-wall-small = The letters are small ({ $points } pt), because larger ones do not fit. They are read from a step away, not across a room.
sheet-leaf-too-large = Not every leaf fits whole into its place: { $kinds }. Stick a smaller one there.
sheet-wall-together = How the sheets go together: { $across } beside each other, { $down } beneath each other
sheet-wall-places = How large the places are
sheet-wall-place = { $kind }: { $high } cm high, { $wide } cm wide
sheet-wall-sheet = sheet { $number }: row { $row }, column { $column }

## Signs for the floor, posts for a trail.

sheet-floor = Signs for the floor
sheet-title-floor = { $title }: signs for the floor
sheet-title-trail = { $title }: trail
sheet-trail-plan = Trail: the plan, for the adult
sheet-trail-about = Hang the posts up along your way, the first one where you begin. Write down where each one hangs. Children carry a find from post to post.
sheet-trail-which = Post
sheet-trail-asks = Question
sheet-trail-hangs = Where it hangs
sheet-trail-post = post { $number }, { $shape }
sheet-trail-go = go to { $post }
sheet-shape-circle = the circle
sheet-shape-triangle = the triangle
sheet-shape-square = the square
sheet-shape-diamond = the diamond
sheet-shape-house = the house
sheet-shape-drop = the drop

## The key in other forms.

sheet-indented = Indented key
sheet-title-indented = { $title }: indented key
sheet-indented-about = Start at the first question. What follows from an answer is beneath it, further in. A solid line says: still yes. A dashed one: still no.
sheet-looks = Strips to lay
sheet-title-looks = { $title }: strips to lay
sheet-looks-about = Cut the strips out. Begin with whatever you see: lay its strip to the right of the names, then the next one. A dot says: this kind can have it. Which kind has a dot on every strip? A question mark: nobody has looked.
sheet-looks-lay = Lay the strips of what you see here.
sheet-look-is = { $name }: { $state }
sheet-look-less = { $name }: less than { $amount }
sheet-look-more = { $name }: { $amount } or more
sheet-look-who = It can be seen on: { $kinds }
sheet-holes = Cards with holes
sheet-title-holes = { $title }: cards with holes
sheet-holes-punch = Cut the cards out. Punch a hole where there is a ring.
sheet-holes-doubt = A dashed ring says that nobody has looked. Punch it too: the kind may have it.
sheet-holes-lay = Look at your find. Take the cards of what you see and lay them exactly on each other.
sheet-holes-light = Hold them against the light. Where it shines through, read the number.
sheet-holes-numbers = Which number is which?

## The album.

sheet-album = Album
sheet-title-album = { $title }: album
sheet-album-about = Each place is as large as the largest leaf that was measured. Stick a leaf or a rubbing there. On a line without a name you write one.
sheet-album-about-wished = Each place has room for a leaf { $cm } cm long. Stick a leaf or a rubbing there. On a line without a name you write one.

## The pocket key: one sheet of paper, folded to eight small pages.

sheet-pocket = Key for the pocket
sheet-title-pocket = { $title }: key for the pocket
sheet-pocket-yes = solid line
sheet-pocket-no = dashed line
sheet-pocket-question = Question { $number }
sheet-pocket-questions = Questions { $first }–{ $last }
sheet-pocket-fold = How to fold it
sheet-pocket-fold-cut = Crease all dotted lines. Short edges together: cut the dashed line.
sheet-pocket-fold-long = Open it. Long edges together, print outside.
sheet-pocket-fold-push = Push the ends together until the cut opens.
sheet-pocket-fold-round = Fold the pages round, the title in front.
sheet-pocket-too-long = This key is too long for the pocket: eight small pages do not hold all its questions in letters that can be read.
sheet-pocket-too-long-remedy = Print “The key on few pages” instead, or make a key to fewer kinds.
