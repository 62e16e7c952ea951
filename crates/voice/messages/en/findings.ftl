### What was found: words and lists that all findings share, and what is said of the words of a
### question, of the shape of a key, and of a table.

list-and = { $before } and { $last }
list-or = { $before } or { $last }
list-and-more = { $before } and { $count } more
list-or-more = { $before } or { $count } more
finding-coverage = { $count ->
    [one] { $checked } of 1 question checked against the table
   *[other] { $checked } of { $count } questions checked against the table
}
finding-quoted = “{ $text }”
finding-asks = asks “{ $about }”
finding-asks-for = asks about { $about }
finding-step = question { $question } ({ $answer })
finding-inch = inch
finding-inches = inches
finding-foot = foot
finding-feet = feet
finding-range = { $low } to { $high }
finding-cell = { $about } of { $kind }
finding-below = less than { $figure }
finding-at-least = { $figure } or more
finding-between = { $from } or more and less than { $below }
finding-nothing-it-can-have = nothing that it can have
finding-not-of-table = something that the table does not have
finding-asked-about = { $about } ({ $form })
finding-clauses = { $before }, and { $next }

## The words of a question.
finding-the-question = Question { $question }, “{ $text }”,
finding-the-first-lead = The first lead of question { $question }, “{ $text }”,
finding-the-second-lead = The second lead of question { $question }, “{ $text }”,
finding-bare = { $called } asks for “{ $word }”, and each child means something else by it.
finding-bare-remedy = Give a length with its unit, a count, or something to compare it with.
finding-compared = { $called } compares with “{ $word }”, and that is not the same for everybody.
finding-compared-remedy = Compare two parts of the same find, or give a length with its unit.
finding-vague = { $called } says “{ $word }”, and people do not agree on what that is.
finding-vague-remedy = Ask about something that everybody sees in the same way.
finding-not-yes-no = { $called } cannot be answered with yes or no.
finding-not-yes-no-remedy = Begin with Is, Are, Does, Do, Has or Have.
finding-two-at-once = { $called } asks two things at once.
finding-two-at-once-remedy = Ask one of them here, and the other in a question of its own.
finding-choice = { $called } offers two choices, so “yes” is not an answer.
finding-choice-remedy = Ask about one of them.
finding-negative = { $called } has “{ $word }” in it; a “no” to that is hard to follow.
finding-negative-remedy = Ask about what is there, and swap the two answers.
finding-names-kind = { $called } names { $kind }: only somebody who knows { $kind } already can answer.
finding-names-kind-remedy = Ask about something you can see on { $kind }.
finding-too-many-words = { $called } has { $words } words.
finding-too-many-words-remedy = Say it in { $most } words or fewer, or make two questions of it.
finding-no-unit = { $called } says { $number }, but no unit.
finding-no-unit-remedy = Write the unit behind it: { $number } { $unit }.

## The shape of a key.
finding-touch = { $count ->
    [one] Question { $question } asks pupils to touch, and { $kinds } is still among what they may hold.
   *[other] Question { $question } asks pupils to touch, and { $kinds } are still among what they may hold.
}
finding-touch-remedy = The caution is printed at this question. Let an adult hand round what may hurt, or add a difference that people can see.
finding-touch-otherwise = Ask about { $about } first: nobody has to touch anything for it. The caution is printed at this question.
finding-comb = From question { $question } on, { $count } questions in a row each split off one end only, like the teeth of a comb.
finding-comb-remedy = Look for a question that makes two heaps of nearly the same size.
finding-long-path = The longest path has { $longest } questions. With two even heaps at every question, { $kinds } kinds would need only about { $even }.
finding-long-path-remedy = Ask questions that make two heaps of nearly the same size, or make two keys.
finding-good-question = Question { $question } is a good one. You can see the answer, it is clear for all { $kinds } kinds, and the question separates them well.
finding-good-question-remedy = Keep it.

## A table without a key.
finding-not-separable = Nothing in the table tells { $kinds } apart.
finding-not-separable-remedy = Look for a difference between them and add it as a column, or leave them together.
finding-blocked = { $kinds } are left together, because { $because }.
finding-blocked-remedy = Add a column with something that can be asked of all of them, or leave them together.
finding-blocked-fill-in = Fill in { $cells }, or add a column with something that can be asked of all of them.
finding-blocked-because = { $about }, which tells { $them } apart, cannot be asked { $whom }
finding-blocked-them = them
finding-blocked-without = { $count ->
    [one] of { $kinds }, which has none
   *[other] of { $kinds }, which have none
}
finding-blocked-perhaps = { $count ->
   *[other] of { $kinds }, which may have none
}
finding-blocked-between = { $count ->
    [one] of { $kinds }, whose range is in between
   *[other] of { $kinds }, whose ranges are in between
}
finding-fragile-hard-and-close = Only { $about } tells { $kinds } apart. It is hard to see, and the ranges are close.
finding-fragile-hard = Only { $about } tells { $kinds } apart, and it is hard to see.
finding-fragile-close = Only { $about } tells { $kinds } apart, and the ranges are close.
finding-fragile-remedy = Look for a second difference between them and add it as a column.
finding-too-narrow = Only { $about } could tell { $one } from { $other } ({ $ranges }), but the difference is less than twice the safety margin of { $margin }. So they are left together.
finding-too-narrow-remedy = Look for another difference, such as the colour, hairs or the smell, and add it as a column.
finding-too-narrow-open = Look for another difference: nobody has looked at { $cells } yet.
finding-smaller-margin = Or make the safety margin of { $about } smaller, if you measure that closely: at the column on the screens, or with --gap 2 at the terminal.
finding-more-too-narrow = { $count ->
    [one] And 1 more pair of kinds differs only in a measure, by less than twice its safety margin, and is left together.
   *[other] And { $count } more pairs of kinds differ only in a measure, by less than twice its safety margin, and are left together.
}
finding-more-too-narrow-remedy = { $count ->
   *[other] Look for a difference that tells many of them apart, and add it as a column.
}
finding-unknown = { $count ->
    [one] In 1 cell nobody has looked yet: { $cells }.
   *[other] In { $count } cells nobody has looked yet: { $cells }.
}
finding-unknown-more = { $count ->
    [one] ; and in one more column
   *[other] ; and in { $count } more columns
}
finding-unknown-remedy = { $count ->
   *[other] Look at these kinds and fill in what you see. Until then a question about it lets them come out on both sides.
}
finding-too-many-groups = There are too many groups of kinds that nothing tells apart to list them all.
finding-too-many-kinds = There are too many kinds to compare each with each; only kinds with equal rows were looked for.
finding-too-many-remedy = Make a smaller table for one place and one group of kinds.
