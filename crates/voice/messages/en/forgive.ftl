### Keys that give doubtful kinds a second place.

forgive-places = Second places in this key
forgive-none-wanted = None were wanted.
forgive-none-saves = None would save a find.
forgive-meant = A kind with a second place comes out at more than one end, and that is meant: whoever misreads the question can still find it.
forgive-right = How many finds come out right
forgive-how-counted = Counted so: a pupil reads each question right as often as the table says, one like the other. A wrong answer loses the find, unless the kind is looked for on that side too.
forgive-no-sum = What each place saves is counted in the key as it is. With second places another order of questions is best, so that it does not add up to what the whole key gains.
forgive-at-most = Where it says “at most”, the search was stopped; a larger --budget goes on.
forgive-too-fine = Exact numbers for this table grew too large, and nothing is claimed from there on. Write rounder counts, or fill in unknown cells.
forgive-no-key = No key: exact numbers for this table grow too large. Write rounder counts, or fill in unknown cells.
forgive-place = { $count ->
    [one] A second place for { $kind } after “{ $answer }” at question { $couplet } ({ $question }) saves { $number } find of 100.
   *[other] A second place for { $kind } after “{ $answer }” at question { $couplet } ({ $question }) saves { $number } finds of 100.
}
forgive-with = { $count ->
    [0] With no second place: { $right } of 100{ $most }{ $more }.
    [one] With one second place: { $right } of 100{ $most }{ $more }.
   *[other] With { $count } second places: { $right } of 100{ $most }{ $more }.
}
forgive-with-places = { $count ->
    [0] With no second place: { $right } of 100{ $most }{ $more }: { $places }.
    [one] With one second place: { $right } of 100{ $most }{ $more }: { $places }.
   *[other] With { $count } second places: { $right } of 100{ $most }{ $more }: { $places }.
}
forgive-most = { "" } (at most { $most })
forgive-more = , { $more } more
forgive-no-more = , no more
forgive-short = { $kind } after “{ $answer }” at “{ $question }”
