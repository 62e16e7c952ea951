### Copy in a group's key.

copy-title = Copy in a key from paper
copy-why = The group drew its key on paper. Type it question by question, say who says yes, and hear what the group forgot.
copy-no-finds = First the finds that the group sorted on paper.
copy-begin = Copy it in
copy-words = What does the paper ask first of these kinds? Type it as the group wrote it.
copy-next = Next: who says yes?
copy-who = Where do they lie on the paper?
copy-filled-in = The table has filled in what it knows of this word. Look whether the group meant the same.
copy-means = Yes, the group means this: { $words } Its sorting then fills the table.
copy-take = Keep this question
copy-both = both
copy-nowhere = nowhere
copy-still-open = Still to copy
copy-no-more = The paper says no more
copy-answer = The answer for the group
copy-works = Every find comes out of your key. Try it with a find that is not on the table.
copy-not-yet = Not every find comes out of your key alone:
copy-questions = { $count ->
    [one] One question back to the group:
   *[other] { $count } questions back to the group:
}
copy-lost = At “{ $words }”: where does { $kind } go?
copy-vague = “{ $words }”: people do not agree on “{ $word }”. What can everybody see, count or measure?
copy-look-again = Look at { $kind } once more: “{ $words }”? Someone else saw it the other way.
copy-together = { $kinds } are still left together. What is different about them?
copy-mend = Look there
copy-later = { $count ->
    [one] One more question is for another day.
   *[other] { $count } more questions are for another day.
}
copy-walks = Every find on its way through your questions
copy-stranded = comes to “{ $words }” and has no way on.
copy-elsewhere = { $kind } goes both ways, so it comes out in another place too.
copy-print = Print it as your poster
copy-heaps = To the heaps
copy-names = What does the group call them?
copy-names-why = Type the names from the paper where they are the group’s own. They are printed on the group’s sheets, with ours beside them. Leave a field empty where there is none.
copy-name-of = { $kind }: the paper calls it
copy-name-nobody = No find comes out here. What does the paper say?
copy-names-keep = Keep their names
copy-sounds-like = The paper says “{ $name }” for { $kind }. It sounds like { $known }.
copy-own-name = “{ $name }” is what they call { $kind }
copy-same-find = This find is { $kind }
copy-lie-apart = { $find } cannot become { $kind } here: at “{ $words }” they are in different heaps.
copy-lie-apart-remedy = Look at both cards in the heaps, and move the one that is in the wrong heap. Then the two can be one find.
copy-lie-apart-look = Look at this question in the heaps
copy-lies-wrong = A card is on the wrong heap: look at the heaps
copy-who-is = The paper says “{ $name }” where no find comes out. Which find is it?
copy-it-is = It is { $kind }: put it there
copy-many-names = { $count } of these names sound like other finds, or are where no find comes out. At most { $most } are asked back at once.
copy-many-names-remedy = Nothing was kept; what you typed is below. Go back, keep some of it first, then the rest.
copy-nobody-like-it = No find has such a name, and every card has an end. If you have it here, add it to our finds.
copy-called-now = By now they call { $kind } “{ $now }”.
copy-called-none-now = By now they have no name of their own for { $kind }.
copy-called-typed = You typed “{ $name }”. What does the paper say?
copy-called-none-typed = You took its name away.
copy-no-own-name = They have no name of their own for { $kind }
copy-leave-name = Leave it as it is
copy-card-moved = Someone put { $kind } on a heap in another window.
copy-card-moved-remedy = Nothing was changed. Go back, and see where it lies now.
