### A newcomer: a find that is not in the key.

newcomer-title = A newcomer
newcomer-why = You have a find that is not in the key. Walk the key with it, as if it were in there, and see where it comes out. Then say what is different, and it gets a place of its own.
newcomer-no-finds = First lay out the finds that the key is for.
newcomer-no-key = There is no key yet that a newcomer could walk.
newcomer-make-key = Find a key for our finds
newcomer-or-heaps = Or make one by heaps
newcomer-key-name = Our key
newcomer-no-question = The key does not ask anything yet. Begin with two heaps.
newcomer-nowhere = This key leads nowhere. Look at it first.
newcomer-name = What is the newcomer called? Leave it empty if nobody knows.
newcomer-walk = Walk the key
newcomer-question = Question { $count }
newcomer-cannot-tell = can’t tell
newcomer-back = One question back
newcomer-trail = The questions so far
newcomer-nameless = the newcomer
newcomer-comes-out = It comes out at { $kinds }
newcomer-comes-out-nowhere = It comes out nowhere
newcomer-look = Lay the two side by side. Look closely: what is different?
newcomer-is-new = not in the key yet
newcomer-same = It is { $kind } after all: add a picture to it
newcomer-number-yes = You said yes to “{ $words }”. Type the number: only then can the table tell them apart by it.
newcomer-number-no = You said no to “{ $words }”. Type the number: only then can the table tell them apart by it.
newcomer-on-the-way = What the key asked on the way
newcomer-others = What else can be looked at
newcomer-of = { $kind }
newcomer-blank = Leave blank what nobody has looked at. Type what you see, such as “lobed or entire”, “30-60”, or “n/a” where it has no such thing.
newcomer-difference = Something new that is different
newcomer-difference-name = What is it?
newcomer-difference-example = underside of the leaf
newcomer-half-difference = The new difference is only half there.
newcomer-half-difference-remedy = Say what it is, and what the newcomer has. What the other has helps too.
newcomer-known-difference = “{ $name }” is in the table already.
newcomer-known-difference-remedy = Fill in its row above instead.
newcomer-slot = See how it fits into the key
newcomer-slot-title = A place for { $kind }
newcomer-in-key = In the key “{ $key }”:
newcomer-into-heap = The key is still being made by hand, so nothing changes in it: the newcomer is in the heap where it came out. Go on with that heap.
newcomer-alike = It will come out together with { $kinds }: the table does not tell them apart.
newcomer-alike-remedy = Go back and write down a difference.
newcomer-no-change = No question will change.
newcomer-added-first = One question comes in at the very beginning: “{ $words }”
newcomer-added = One question comes in after question { $after } (“{ $before }”): “{ $words }”
newcomer-rewritten = Question { $number } (“{ $before }”) will ask something else: “{ $words }”
newcomer-struck = Question { $number } (“{ $before }”) will not be asked any more.
newcomer-stayed = { $count ->
    [one] The other question stays as it was.
   *[other] The other { $count } questions stay as they were.
}
newcomer-dearer = A new key would be up to { $questions } questions per find shorter. This one keeps what the group knows.
newcomer-stopped = There was no time to make sure that fewer changes would not do.
newcomer-inexact = Some questions are found again by the machine, and may come in another order.
newcomer-keep = Slot it in
newcomer-again = Back to the two cards
newcomer-is-in = { $kind } has a place in the key
newcomer-its-page = Its own page: add a picture
newcomer-to-key = The whole key
newcomer-to-heaps = The heaps
newcomer-next = Another newcomer
newcomer-not-yet = Nothing is kept yet.
newcomer-clashes = { $count ->
    [one] In one place the table says something else already.
   *[other] In { $count } places the table says something else already.
}
newcomer-clashes-remedy = Look at the find again, and decide what to write there.
newcomer-table-says = The table: { $text }
newcomer-you-say = What you typed: { $text }
newcomer-leave-it = Leave it as it is
newcomer-write-it = From now on it is “{ $text }”
newcomer-clash-moved = Someone changed a find beside the newcomer, perhaps in another window.
newcomer-clash-moved-remedy = Go back to the two cards, and see what is written there now. Nothing was changed.
newcomer-heap-asks = That heap then asks: “{ $words }”
newcomer-not-asked = “{ $name }” is written down in the table. The key asks about something else here.
newcomer-picture = A picture of the newcomer, if there is one
newcomer-many-pictures-remedy = Choose fewer.
newcomer-walk-moved = Someone changed a question on the way of the newcomer in another window. Its answers were for other questions.
newcomer-walk-moved-remedy = Nothing was kept. Walk the key again from its first question.
newcomer-change-moved = Someone changed something in another window: the newcomer would not come in as the page said.
newcomer-change-moved-remedy = Nothing was kept. Go back to the two cards, and see how it fits into the key now.
