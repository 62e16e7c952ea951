### Copy in a group's key.

copy-title = Copy in a key from paper
copy-why = The group drew its key on paper. Type it question by question, say who says yes, and hear what the group forgot.
copy-no-finds = First the finds that the group sorted on paper.
copy-begin = Copy it in
copy-words = What does the paper ask first of these kinds? Type it as the group wrote it.
copy-next = Next: who says yes?
copy-who = Where do they lie on the paper?
copy-filled-in = The table has filled in what it knows of this word. Look whether the group meant the same.
copy-take = Take it over
copy-both = both
copy-nowhere = nowhere
copy-still-open = Still to copy
copy-no-more = The paper says no more
copy-answer = The answer for the group
copy-works = Every find comes out of your key. Try it with a leaf that is not on the table.
copy-not-yet = Not every find comes out of your key alone:
copy-questions = { $count ->
    [one] One question back to the group:
   *[other] { $count } questions back to the group:
}
copy-lost = At “{ $words }”: where does { $kind } go?
copy-look-again = Look at { $kind } once more: “{ $words }”? Somebody else saw it the other way.
copy-together = { $kinds } still lie together. What is different about them?
copy-mend = Look there
copy-later = { $count ->
    [one] One question more is for another day.
   *[other] { $count } questions more are for another day.
}
copy-walks = Every find on its way through your questions
copy-stranded = stands at “{ $words }” and has no way on.
copy-elsewhere = { $kind } goes both ways, so it comes out in another place too.
copy-print = Print it as your poster
copy-heaps = To the heaps
