### What the command line says of a key: what it takes, what is proved, what wishes cost.

report-questions = { $count ->
    [one] { $number } question
   *[other] { $number } questions
}
report-nothing-tells-apart = Nothing in this table tells any of these kinds apart.
report-mean = About { $questions } per find, at most { $longest }.
report-not-kept = { $count ->
    [one] One of your questions could not be kept; below is said why. The key does without it.
   *[other] Some of your questions could not be kept; below is said why. The key does without them.
}
report-second-proof = A second opinion, which knows nothing of the search, went through the proof and agrees.
report-second-every-key = A second opinion, which knows nothing of the search, tried every key and finds the same.
report-second-none = No second opinion on that: no proof comes with the key, and there are too many keys to try them all.
report-proved = Proved: no key from this table takes less.
report-proved-wishes = Proved: no key from this table does better by your wishes.
report-proved-spared = Proved: nobody touches what may hurt. No such key needs fewer questions.
report-proved-touch-waits = Proved: touch waits until nothing else separates. No such key needs fewer questions.
report-stopped-budget = { $count ->
    [one] Not proved best: the search stopped after one heap.
   *[other] Not proved best: the search stopped after { $count } heaps.
}
report-stopped-memory = { $count ->
    [one] Not proved best: after one heap the search had all the memory that it may take.
   *[other] Not proved best: after { $count } heaps the search had all the memory that it may take.
}
report-stopped-overflow = Not proved best: this table has so many unknown cells and odd counts that the search rounds.
report-could-be-saved = At most { $part } % of the questions could be saved by any other key.
report-larger-budget = A larger --budget goes on.
report-larger-memory = A larger --memory goes on.
report-rounder-counts = A larger --budget may come closer. Rounder counts (7 and 3 instead of 713 and 311) and fewer unknown cells let it prove more.
report-to-look-at = What to mend and what is worth a look, in the table and the key

## What is asked, and what the key reaches.
report-all-columns = All columns can be asked of { $hand }.
report-not-seen = Not asked, as { $hand } does not show it: { $columns }.
report-not-said = Nobody said where this can be seen, so it is asked: { $columns }.
report-hand-in-season = { $hand } in { $season }
report-season = { $season }
report-the-find = the find
report-within = { $count ->
    [one] { $wish }: after 1 question at most.
   *[other] { $wish }: after { $count } questions at most.
}
report-as-far = , as far as was looked
report-right = About { $finds } finds of 100 come out right, if each column is read right as often as the table says (95, 90 or 80 of 100 for an easy, fair or hard one where it does not){ $sure }.
report-new-words = { $count ->
    [one] { $number } new word
   *[other] { $number } new words
}
report-even = At most { $most } on any question, and { $met } per find in all{ $sure }.
report-words = { $count ->
    [one] The whole key uses { $number } word{ $sure }.
   *[other] The whole key uses { $number } different words{ $sure }.
}
report-no-ruler = Nobody needs a ruler.
report-ruler = { $count ->
    [one] A ruler is needed { $number } time per find{ $sure }.
   *[other] A ruler is needed { $number } times per find{ $sure }.
}

## What wishes cost.
report-costs = costs { $questions } per find
report-costs-about = costs about { $questions } per find
report-saves = saves { $questions } per find
report-saves-about = saves about { $questions } per find
report-costs-nothing = costs nothing
report-costs-about-nothing = costs about nothing
report-price = { $wish } { $costs }.
report-price-together = { $wish } { $costs }, and leaves together: { $pairs }.
report-price-all = All your wishes together: this key { $costs }.
report-price-none = Your wishes cost nothing.
report-wish-kept = Keeping your questions
report-wish-hand = Asking only what { $hand } shows
report-wish-never = Never asking about { $column }
report-wish-touch-allowed = Letting people touch what may hurt
report-wish-touch = Sending nobody to touch what may hurt
report-wish-order = Asking in your order
report-wish-early = That { $wish }
report-wish-goals = Putting your other aims first
report-touch-allowed = Touching is allowed. That { $costs }.
report-touch-allowed-nobody = Touching is allowed. That { $costs }, and nobody touches what may hurt.
report-touch-spared = Nobody is sent to touch what may hurt while something else separates. That { $costs }.
report-touching = { $count ->
    [one] Question { $questions } is answered by touch while a kind with a caution may be in the hand.
   *[other] Questions { $questions } are answered by touch while a kind with a caution may be in the hand.
}
report-nothing-else = Nothing else separates there.
report-nothing-else-or-kept = Nothing else separates there, or you kept it.

## Around it.
run-looking = looking for the best key
run-looking-proved = looking for the best key: { $part } % proved
run-writing = writing the key down
run-look-at = What to look at
run-look-at-old = In last season's key
run-mend-first = { $count ->
    [one] Before you print this: 1 thing says mend this.
   *[other] Before you print this: { $count } things say mend this.
}
run-written = Written into { $folder }: { $files }
run-not-written = Not written: { $file }. { $sentence } { $remedy }
run-not-large = These sheets have no large print and stay as they are: { $files }
run-is-that = Question { $question }, “{ $words }”: is that “{ $meant }”?
run-yes-or-no = (y/n)
run-yes-words = y, yes
run-no-words = n, no

## A second opinion on a key.
opinion-works = This key works: every kind comes out where it should, in every form.
opinion-works-apart-from-that = Apart from that, this key works: every kind comes out, in every form.
opinion-not-all-checked = There is nothing to mend in what could be checked, but not all of it could be.
opinion-not-yet = This key does not work yet.

## What a command has done.
run-open-at = Spinney is open at { $address }
run-end-it = Press Ctrl-C to end it.
run-new-collection = { $file } was not there: it is a new, empty collection.
run-invented-walk = This is an invented hedge walk, for a try. It is in memory only and is gone when you end Spinney, unless you save a copy on the screens; “spinney open FILE” keeps a collection of your own.
run-damaged-page = The page that opens now saves what can be read into a new file, and so does:
run-damaged-same = The damaged file is not changed.
run-damaged = { $file } is damaged.
run-made-after = It was made after { $when }.
run-steps = { $count ->
    [one] 1 step
   *[other] { $count } steps
}
run-pictures = { $count ->
    [one] 1 picture
   *[other] { $count } pictures
}
run-packed = { $count ->
    [one] { $what } is packed into { $file }.
   *[other] { $what } are packed into { $file }.
}
run-unpacked = { $count ->
    [one] { $what } is unpacked into { $file }.
   *[other] { $what } are unpacked into { $file }.
}
run-saved = { $count ->
    [one] { $what } is saved into { $file }.
   *[other] { $what } are saved into { $file }.
}
run-pictures-lost = Pictures that could not be read and were left out: { $number }.
run-not-damaged = Nothing in { $file } is damaged. No file was made.
run-not-changed = { $file } was not changed.
run-look-over = Look over what came after the damage: it may rest on what is lost.
run-scale-card = Written: { $file }. Print it at 100 %, photograph leaves on it, then: spinney measure photo.jpg
run-scale-strip = Written: { $file }. Print it at 100 % and cut out a strip. Photograph it beside what you measure, then: spinney measure photo.jpg
run-template = Written: { $file }. Fill in one row a kind, then: spinney key { $file }
run-pocket = Written: { $file }. Copy it onto a memory stick or a tablet, and open it in a browser.
run-understood = { $kinds } and { $columns } were read:
run-nothing-yet = nothing yet
run-counted = counted, { $span }
run-measured = measured, { $span }
run-span = { $low } to { $high }
run-hedge-walk = A hedge and street walk in early October, 12 kinds
run-pond-tray = A pond tray, 10 animals
run-pasta = A warm-up with 8 shapes of dry pasta
run-demo-best = The best key from { $table } ({ $folder }):
run-demo-key = The key in { $key } ({ $folder }/opinion.txt): { $verdict }; { $checked }.
run-demo-works = it works
run-demo-not-all = not all of it could be checked
run-demo-not-yet = { $count ->
    [one] it does not work yet: 1 thing says mend this
   *[other] it does not work yet: { $count } things say mend this
}
run-demo-done = All of it is invented; it is in { $folder }. Open { $folder }/hedge_walk/best/today.pdf for paper and { $folder }/hedge_walk/best/phone.html for a phone.
