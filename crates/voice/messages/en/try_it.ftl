### Try the key.

try-no-key = There is no key to try yet.
try-found = What did you find?
try-need = You need { $part }.
try-how = Read the question. Look at several, not only one. Measure, do not guess.
try-sentence = At the end, read the sentence: it must fit.
try-care = Take care
try-before-touch = Read before you touch
try-may-be = It may still be:
try-begin = Begin
try-ways = Back and out
try-back = Back
try-leave = Leave
try-step = Question { $number }
try-which = Which of these two fits?
try-cannot-tell = I can't tell: go both ways
try-could-not = could not tell
try-possible = { $count ->
    [one] It may still be 1 kind
   *[other] It may still be one of { $count } kinds
}
try-words = The words
try-not-confused = Not to be mixed up with { $other }
try-trail = How you got here
try-nobody = Nothing that we know comes out here
try-is-it = It comes out as
try-may-be-it = It may be this one
try-went-both-ways = You could not tell at “{ $words }”, so you went both ways.
try-no-sentence = Nobody has written down how to make sure of it.
try-second-look = To make sure, look once more
try-compare = Both ways: compare these, and see which fits
try-one-of = It is one of these: this key does not tell them apart
try-newcomer = Perhaps it is a newcomer.
try-newcomer-how = Bring it in
try-confirm = Does this fit?
try-another = Try another find
try-not-it = It does not fit: go back
