### What was found in what is claimed of a key, and in the wishes that it was to keep.

finding-claim-remedy = Make the key again from this table. If this comes back, the fault is in Spinney.
finding-effort-not-added = The claimed effort could not be added up again for this key.
finding-effort-not-added-remedy = Link every question, and mend what is asked of kinds that cannot answer.
finding-cost-wrong = What is claimed of this key is not so: { $wrong }.
finding-mean-questions = { $count ->
    [one] a find takes { $is } question on average, not { $said }
   *[other] a find takes { $is } questions on average, not { $said }
}
finding-not = { $is }, not { $said }
finding-bound-above-key = No key is said to take less effort than { $bound }, but this one takes { $takes }.
finding-not-at-bound = The key is said to be proved best, but its effort is { $takes } and the proved bound { $bound }.
finding-bound-above-some = No key is said to take less effort than { $bound }, but one takes { $least }.
finding-goal-wrong = What is claimed of the aims of this key is not so: { $wrong }.
finding-goal-not-counted = { $goal } could not be counted again for this key
finding-goal-nothing-said = nothing is said of { $goal }
finding-goal-effort = the least effort
finding-goal-longest = the longest path
finding-goal-right = the most finds at the right name
finding-goal-even = few new words at once
finding-goal-words = few different words
finding-goal-rulers = as little measuring as possible
finding-reaches-effort = { $count ->
   *[other] its effort is { $value }
}
finding-reaches-longest = { $count ->
    [one] the longest path has { $value } question
   *[other] the longest path has { $value } questions
}
finding-reaches-right = { $count ->
   *[other] its misreadings add up to { $value } (−ln of how often each column is read right, in millionths)
}
finding-reaches-even = { $count ->
    [one] the most on any one question is { $value } new word
   *[other] the most on any one question is { $value } new words
}
finding-reaches-words = { $count ->
    [one] the whole key uses { $value } different word
   *[other] the whole key uses { $value } different words
}
finding-reaches-rulers = { $count ->
    [one] a ruler is taken up { $value } time over all finds
   *[other] a ruler is taken up { $value } times over all finds
}
finding-reaches-all-new-words = all finds together meet { $value } new words, each find by its weight
finding-reaches-apart = { $count ->
    [one] { $kinds } are apart within 1 question
   *[other] { $kinds } are apart within { $count } questions
}
finding-reaches-out = { $count ->
    [one] { $kind } is out within 1 question
   *[other] { $kind } is out within { $count } questions
}
finding-proof-fails = The proof that this key is the best does not hold: { $why }.
finding-proof-does-not-fit = it speaks of kinds, values or numbers that do not fit the table
finding-proof-cannot-separate = it says that { $kinds } must be separated, but no question can do that
finding-proof-says-too-much = it says too much of what it takes to separate { $kinds }, as can be seen when { $about } is asked about
finding-proof-shows-less = it claims that { $claimed }, but only shows that no key comes below { $least }
finding-better-key = The key is said to be the best under its wishes, but there is a better one: { $best }.
finding-no-key-reaches = No whole key reaches what is claimed of this one. At best, { $best }. See whether an end names kinds that could be told apart.

## Wishes.
finding-wish-remedy = Make the key again with this wish, or take the wish back.
finding-first-question = The first question
finding-question-after = The question after { $answer } at question { $question }
finding-kept-not-asked = { $place } was to be about { $wanted }, but nothing is asked there.
finding-kept-other = { $place } was to be about { $wanted }, but { $here }.
finding-kept-other-is = question { $question } is about { $asked }
finding-kept-not-linked = it is not linked to the table
finding-not-to-be-asked = Question { $question } asks about { $about }, { $why }.
finding-not-to-be-asked-remedy = Ask about something else there, or take the wish back.
finding-left-out-never = which was never to be asked about
finding-left-out-hand = which cannot be seen on what is in the hand ({ $hand })
finding-left-out-season = which cannot be seen in { $season }
finding-sent-to-touch = Question { $question } is answered by touch while { $kinds } may be in the hand, but { $otherwise } can be asked about there.
finding-touch-not-so = Question { $question } is said to send people to touch what may hurt, but it does not.
finding-touch-not-said = Question { $question } sends people to touch what may hurt, and that is not said.
finding-out-of-order = Question { $question } asks about { $about }, but { $first } was to come first and can be asked there.
finding-early-apart-not-said = { $kinds } were to be apart early, but it is not said within how many questions.
finding-early-out-not-said = { $kind } was to be out early, but it is not said within how many questions.
finding-late-apart = { $count ->
    [one] { $kinds } were to be apart within 1 question, but it takes { $takes }{ $to }.
   *[other] { $kinds } were to be apart within { $count } questions, but it takes { $takes }{ $to }.
}
finding-late-out = { $count ->
    [one] { $kinds } was to be out within 1 question, but it takes { $takes }{ $to }.
   *[other] { $kinds } was to be out within { $count } questions, but it takes { $takes }{ $to }.
}
finding-late-up-to = { " " }(up to question { $question })
