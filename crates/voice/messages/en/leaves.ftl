### Leaves that were kept one by one.

leaves-title = Leaves one by one
leaves-link = Leaves one by one
leaves-back = All leaves
leaves-none = No leaf is kept by itself yet. Measure leaves in a scan and take them in, or add a table with one row for each leaf.
leaves-all = { $count ->
    [one] 1 leaf of { $kinds }.
   *[other] { $count } leaves of { $kinds }.
}
leaves-count = { $count ->
    [one] 1 leaf
   *[other] { $count } leaves
}
leaves-of-plants = { $count ->
    [one] { $leaves } of 1 plant
   *[other] { $leaves } of { $count } plants
}
leaves-reach-of = { $span }, { $leaves }
leaves-far = Far from the others
leaves-far-why = Look at each leaf again. It counts until you say that it was measured wrongly.
leaves-far-one = { $kind }, { $about }: { $value }. The others are { $others }.
leaves-right = It is right: leave it in
leaves-wrong = It was measured wrongly
leaves-other-kind = It is another kind:
leaves-other-kind-do = Move it there
leaves-not-counted = Measured wrongly, so not counted
leaves-again = Count it again
leaves-is-right = looked at again, and right
leaves-is-wrong = measured wrongly, so not counted
leaves-strips = From the smallest to the largest
leaves-dots = Each dot is one leaf. A ring is a leaf far from the others.
leaves-kind = Kind
leaves-reach = Leaves
leaves-mean = Mean and standard deviation
leaves-each = All leaves
leaves-more-pairs = { $count ->
    [one] 1 more pair of kinds is told apart as well or better.
   *[other] { $count } more pairs of kinds are told apart as well or better.
}
leaves-what = What is wrong with it?
leaves-nothing-measured = Nothing was measured on it.
leaves-take-out = Take this leaf out
leaves-put-right = Correct what was measured
leaves-put-right-why = Look at the leaf again. Empty a field to take out what was measured.
leaves-not-read = “{ $text }” cannot be read in the column “{ $name }”.
leaves-not-read-remedy = Type it as it stands on the other leaves, such as 52 mm or toothed.
leaves-unread = What can no longer be read
leaves-unread-why = Its column was changed since, so these do not count. Change the column back, or put each right on the page of its leaf.
leaves-gone = This leaf is not here any more.
leaves-gone-remedy = Go back to all leaves.
leaves-moved = Someone changed this leaf in another window.
leaves-moved-remedy = Look at it again, then decide.
