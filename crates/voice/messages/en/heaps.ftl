### Heaps.

answer-yes = yes
answer-no = no
answer-varies = varies
answer-middle = middle
heaps-no-finds = First the finds: lay them out, then sort them into two heaps.
heaps-empty = Lay all finds on the table. What is the difference between these and those? Begin with one question, and sort them into a yes heap and a no heap.
heaps-whose = Whose key is it?
heaps-whose-example = Group Blue
heaps-unnamed = Key { $number }
heaps-start = Begin with two heaps
heaps-title = Two heaps
heaps-copy = Copy in a key from paper
heaps-on-paper = Is the key on paper already?
heaps-path = The way to this heap
heaps-here = { $count ->
    [one] here: 1 kind
   *[other] here: { $count } kinds
}
heaps-ask-otherwise = Ask something else here
heaps-yes = These say yes
heaps-no = These say no
heaps-middle = Not placed, or it varies
heaps-drag = Drag a card onto yes or no, or tap yes or no on it.
heaps-tap = Tap yes or no on each card.
heaps-nobody-waits = No find is left over.
heaps-empty-heap = nothing yet
heaps-comes-out = { $kind } comes out here.
heaps-go-on = Go on with these { $count }
heaps-one-left = Only this one is left: it comes out here.
heaps-difference = What is the difference between these and those?
heaps-own-question = Ask in your own words
heaps-leaf-example = Is the edge of the leaf jagged?
heaps-own-example = Does it have more than one colour?
heaps-ask = Ask this
heaps-could-ask = What you could ask here
heaps-more-offers = { $count ->
    [one] one more question
   *[other] { $count } more questions
}
heaps-too-many = This table has so many different measurements that its questions cannot all be compared here. Type your own question.
heaps-no-table = As soon as the table says something of these kinds, questions are offered here.
heaps-cheapest = the shortest way
heaps-hardly = hardly longer
heaps-price = { $price } more questions per find
heaps-price-least = at least { $price } more questions per find
heaps-say-yes = { $count ->
    [one] 1 says yes
   *[other] { $count } say yes
}
heaps-say-no = { $count ->
    [one] 1 says no
   *[other] { $count } say no
}
heaps-split-both = { $count ->
    [one] one varies, or nobody has looked at it
   *[other] { $count } vary, or nobody has looked at them
}
heaps-does-it-mean = Does your question mean this?
heaps-does-it-mean-more = If so, the cards go where the table says, and you look whether that is right. If not, sort them by hand.
heaps-no-words = There is no question yet.
heaps-no-words-remedy = Type what the difference is, as a question that can be answered with yes or no.
heaps-gone = This key, kind or question is not there any more.
heaps-gone-remedy = It was taken out, perhaps in another window. “What we did” brings it back.
heaps-not-of-table = The table cannot be asked that: it has no such column, word or number.
heaps-not-of-table-remedy = Go back and choose one of the questions that are offered now, or ask in your own words.
heaps-cannot-write = What to write into the table is not clear from yes and no alone.
heaps-cannot-write-remedy = Open the table and type what you see, such as “lobed or entire” or “30-60”.
card-not-placed = not placed yet
card-varies = it varies: both ways
card-table-varies = it varies, says the table: both ways
card-by-table = says the table
card-by-who = { $count ->
    [one] says { $who }
   *[other] say { $who }
}
card-table-yes = the table says yes.
card-table-no = the table says no.
card-table-both = the table says that it varies.
card-take-table = Put it where the table says
card-mend-table = The table is wrong: write what we see
card-differ = people do not agree here.
card-we-put = You put it { $side ->
    [yes] on the yes heap
    [no] on the no heap
   *[both] on both heaps
}.
card-we-put-at = You put it { $side ->
    [yes] on the yes heap
    [no] on the no heap
   *[both] on both heaps
} at “{ $words }”.
card-who-put = { $who } put it { $side ->
    [yes] on the yes heap
    [no] on the no heap
   *[both] on both heaps
}.
card-who-put-at = { $who } put it { $side ->
    [yes] on the yes heap
    [no] on the no heap
   *[both] on both heaps
} at “{ $words }”.
card-take-back = Take our card back
card-we-are-right = We looked again: write what we see
card-decide = Decide who is right
beside-not-placed = Not placed yet
beside-all-placed = No find is forgotten.
beside-nothing-sorted = Nothing is sorted yet.
beside-together = Still left together
beside-first-place = First every card gets its place.
beside-none-together = No heap holds two kinds any more.
beside-finish = The rest
beside-finish-button = Finish it for me
beside-finished = It is finished: every kind comes out alone.
beside-unfinish = Leave the rest to the group again
beside-answers = { $count ->
    [one] One answer more would help
   *[other] { $count } answers more would help
}
answers-title = { $count ->
    [0] All answers are there
    [one] One answer more would help
   *[other] { $count } answers more would help
}
answers-none = Nothing that the table asks about is blank where it would help. Kinds that are still left together need a new difference.
answers-back = Back to the heaps
answers-look = Look at { $kind }: { $character }?
answers-why = It would tell it from { $kinds }.
answers-has-none = it has no such thing
answers-number = What do you see? A number or a range, such as 30-60
answers-write = Write it down
answers-later = Later
heaps-moved = Someone changed the question here in another window. It is now: { $words }
heaps-moved-remedy = Go back, look at the heap as it is now, and do it again there.
heaps-moved-away = Someone took out the question here in another window.
heaps-moved-away-remedy = { heaps-moved-remedy }
heaps-way-moved = Someone changed a question on the way to this heap in another window.
heaps-way-moved-remedy = { heaps-moved-remedy }
heaps-another = Begin another key
