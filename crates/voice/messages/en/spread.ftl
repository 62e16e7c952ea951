### How single leaves of a kind spread, and how far a cut between two kinds can be trusted.

spread-all = { $count ->
    [one] 1 row of { $kinds }.
   *[other] { $count } rows of { $kinds }.
}
spread-nothing = Nothing was measured or counted on them, so there is nothing to say about numbers.
spread-how-far = From the smallest to the largest
spread-of = { $name }: { $span }, mean { $mean }, standard deviation { $deviation } ({ $measured })
spread-of-one = { $name }: { $value } ({ $measured })
spread-measured = { $count ->
    [one] 1 measured
   *[other] { $count } measured
}
spread-measured-on = { $count ->
    [one] { $measured } on 1 plant
   *[other] { $measured } on { $count } plants
}
spread-outliers = { $count ->
    [one] Far from the others: { $finds }. Measure it again, or see whether it is another kind. It counts until you change it.
   *[other] Far from the others: { $finds }. Measure them again, or see whether they are another kind. They count until you change them.
}
spread-outlier = { $value } ({ $find })
spread-row = row { $row }
spread-row-called = row { $row }, number { $find }
spread-row-in = row { $row }, number { $find } in { $picture }
spread-cuts = Where to cut between two kinds
spread-one-kind = There is only one kind.
spread-not-both = No two kinds were measured in the same column.
spread-too-many-kinds = There are too many kinds to compare two by two. Make a smaller table for one place.
spread-cut = { $low } or { $high }? “{ $about }”: { $at } or more is { $high }, less is { $low }.
spread-none-wrong = All { $finds } are on the right side. The safety margin is { $margin }.
spread-wrong = On the wrong side: { $low-wrong } of { $low-finds } ({ $low }), { $high-wrong } of { $high-finds } ({ $high }). There is no safety margin.
spread-left-out = With each left out once, { $share } in 100 come out wrong.
spread-none-left-out = Each left out once comes out right. Of { $finds } that is not much: up to { $still } in 100 more may still come out wrong.
spread-normal = If the numbers of both kinds follow the normal curve, about { $share } in 100 more are on the wrong side.
spread-enough = Enough were measured to trust this.
spread-measure = Measure { $more } before you trust this.
spread-more-of = { $count } more of { $kind }
spread-never = Do not trust this, however many you measure. Even if further finds are like these, more than 5 in 100 of { $kinds } would be on the wrong side.
spread-too-many = It would take more than 300 of { $kinds } to trust this. Look for another difference.
spread-more-pairs = { $count ->
    [one] 1 more pair is cut as well or better (--all-pairs names it).
   *[other] { $count } more pairs are cut as well or better (--all-pairs names them).
}
