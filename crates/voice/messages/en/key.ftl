### Key.

key-title = Key
key-no-finds = First the finds: a key needs kinds to tell apart.
key-none-yet = There is no key yet. Spinney can find one from the table, or your group makes its own from two heaps.
key-no-kinds = The kinds that this key was made for are not there any more.
key-no-question = This key has no question yet. Begin with two heaps, or let it be found from the table.
key-to-heaps = To the heaps
key-name = What is the key called?
key-name-example = Hedge walk, class 4
key-group = Whose is it? (a group's colour or number, never a child's name)
key-group-example = Group Blue
key-start = Begin another key
key-start-finished = Find a key from the table
key-start-empty = Begin with two heaps
key-looks = How to look at it
key-as-list = As questions
key-as-tree = As a tree
key-question = Question
key-kept = kept
key-go-to = go to question { $number }
key-together = left together
key-are-together = are left together
key-left-together = These are left together: { $kinds }.
key-together-all = { $count ->
   *[other] Nothing is asked yet, so all { $count } kinds are left together.
}
key-together-more = { $kinds } and { $count } more
key-one-more-thing = One more thing about { $kinds }
key-one-more-question = Ask one more question about { $kinds }
key-finish-needs = To tell them apart, Spinney needs:
key-together-finished = Spinney has asked all that the table can answer. Look for a difference, and write it down here:
key-together-table-can = The table can tell some of them apart: ask one more question, or let “Finish it for me” ask it.
key-together-look = Nothing in the table tells them apart. Look for a difference, and ask about it here:
key-nobody = no find comes out here
key-guess-end = perhaps { $kind }
key-guess = Nobody has looked at what question { $number } asks of { $kind }, so it goes both ways here.
key-guess-differ = People do not agree about what question { $number } asks of { $kind }, so it goes both ways here.
key-say-it = Say it for question { $number }
key-decide-it = Decide for question { $number }
key-change = Change
key-close = Done with this question
key-see-heaps = See its heaps
key-second-look = A second look:
key-second-same = gives the same answer.
key-second-opposite = gives the other answer.
key-words = The question in your words
key-reword = Take these words
key-swap-title = Turn the question round
key-swap-words = The question turned round, so that yes means the other heap
key-swap = Turn the question round
key-keep = Keep this question
key-keep-why = It stays, and so do the questions above it, whatever else changes.
key-let-go = Let it go
key-let-go-why = This question, and those below it that you kept, may be others again.
key-ranges = What was measured: { $character }
key-number = Yes means this much or more
key-number-below = Yes means less than this
key-move = Move the line here
key-gap = Inside the shaded band ({ $gap } to each side), two people measuring may disagree.
key-not-measured = not measured
key-no-number = That is not a number.
key-no-count = That is not a whole number.
key-no-number-remedy = Choose a number between the bars, such as one in the middle of the space between two of them.
key-inside = This number is inside the range of { $kinds }: some of them would say yes and some no.
key-inside-remedy = Take a number between the bars.
key-not-of-table = This question is about two columns at once, so its number cannot be moved here.
key-not-of-table-remedy = Write the ratio into the table as a column of its own, then ask about that.
key-instead = { $count ->
    [0] Ask something else here
    [one] Ask something else here: 1 question
   *[other] Ask something else here: { $count } questions
}
key-instead-none = The table has no other question that would do here.
key-instead-more = { $count ->
    [one] One more costs more than these.
   *[other] { $count } more cost more than these.
}
key-size = { $count ->
    [0] No question yet
    [one] 1 question for { $kinds } kinds
   *[other] { $count } questions for { $kinds } kinds
}
key-may-change = The rest of this key is found from the table: when the table changes, its questions may change.
key-keep-all = Keep every question as it is
key-moved = The questions of this key have changed, perhaps in another window.
key-moved-remedy = Nothing was kept. Go back, look at the questions as they are now, and keep those.
key-way-moved = Someone changed a question above this one in another window.
key-way-moved-remedy = Go back, look at the key as it is now, and do it again there.
key-all-kept = Every question of this key is kept for as long as the table allows it. New ones may come in where kinds are left together.
key-mean-one = about one question per find
key-mean = about { $mean } questions per find
key-longest = { $count ->
    [one] never more than 1 question
   *[other] never more than { $count } questions
}
key-as-drawn = As your group made it.
key-as-drawn-works = This key works: every kind comes out at its own name. It is as your group made it.
key-finish = Finish it for me
key-unfinish = Leave it as we drew it
key-best = No key needs fewer questions; a second opinion agrees.
key-best-spared = Nobody touches what may hurt. No such key needs fewer questions, and a second opinion agrees.
key-best-touch-waits = Touch waits until nothing else separates. No such key needs fewer questions, and a second opinion agrees.
key-best-wished = No key that keeps to what you wished needs fewer questions; a second opinion agrees.
key-best-alone = No key needs fewer questions. The table is too large for a second opinion on that.
key-best-so-far-alone = No key needs fewer questions. A second opinion was not asked yet.
key-ask-second = Ask for a second opinion
key-contradicted = The search says that no key needs fewer questions, but the second opinion does not agree: see what to mend.
key-not-sure = The best so far, not yet sure: no key for this table can use fewer than { $least } questions per find.
key-too-fine = The best that was found. The numbers in this table have too many digits to be sure.
key-look-on = Go on looking
key-wishes-cost = What you kept and wished for:
key-touch-costs = Nobody is sent to touch what may hurt while something else separates. That takes
key-touch-saves = Touching is allowed. That takes
key-touching = { $count ->
    [one] Question { $questions } has to be answered by touch while a kind with a caution is possible. Nothing else separates there.
   *[other] Questions { $questions } have to be answered by touch while a kind with a caution is possible. Nothing else separates there.
}
key-touching-or-kept = { $count ->
    [one] Question { $questions } has to be answered by touch while a kind with a caution is possible. Nothing else separates there, or you kept it.
   *[other] Questions { $questions } have to be answered by touch while a kind with a caution is possible. Nothing else separates there, or you kept them.
}
key-more = More
key-more-effort = A hard question counts for two or three, and one that takes a ruler or a lens for twice as many.
key-more-heaps = { $count ->
    [one] One heap was taken apart to find out.
   *[other] { $count } heaps were taken apart to find out.
}
key-looking = Looking for a better key
key-looking-more = You can do other things while it looks. A change to the table or the key ends the search.
key-looking-best = So far { $best } questions per find. No key for this table can use fewer than { $least }.
key-looked = { $count ->
    [one] One heap taken apart.
   *[other] { $count } heaps taken apart.
}
key-stop = Stop, and take the best so far
key-mend = What to mend
key-nothing-to-mend = Nothing.
key-mend-at = At question
key-unanswered = { $count ->
    [one] Nobody has said of { $kind } what this question asks:
   *[other] Nobody has said of { $kind } what these { $count } questions ask:
}
key-not-agreed = { $count ->
    [one] People do not agree about { $kind } in what this question asks:
   *[other] People do not agree about { $kind } in what these { $count } questions ask:
}
key-not-agreed-remedy = Look at { $kind } together and decide. Until then it goes both ways.
key-unanswered-lost = On some of its ways { $kind } is lost.
key-unanswered-remedy = Look at { $kind } and say yes or no. Until then it goes both ways.
key-unanswered-more = { $count ->
    [one] The same of one kind more
   *[other] The same of { $count } kinds more
}
key-not-asked = “{ $words }” was kept, but cannot be asked there.
key-why-blocked = { $kind } does not, or may not, have what it asks about, or its range reaches over the number.
key-why-alike = All kinds that come there answer it alike.
key-why-no-state = The table has no such word any more.
key-why-after = The question above it cannot be asked, so no find comes here.
key-why-left-out = It is among what this key never asks, or cannot be seen on what is in the hand.
key-why-never = Nothing in the table does it.
key-for-what = What this key is for
key-hand = What is in the hand?
key-any-hand = anything
key-season = When?
key-any-season = any time
key-touch = Touching is allowed
key-touch-more = Otherwise nobody is sent to touch a find while a kind with a caution is still possible, as long as something else separates.
key-never = Never ask about
key-describe = Take this
key-remove = Take this key out
key-remove-more = “What we did” brings it back.
key-compare = Two keys side by side
key-compare-too-few = Two keys are needed to lay them side by side.
key-compare-button = Lay side by side
key-one = One key
key-other = The other
key-open = Open it
key-row-works = Does it work?
key-row-together = Left together
key-none-together = none
key-works = yes: every kind comes out alone
key-works-together = every kind comes out, but not each alone
key-works-in-part = as far as it could be checked
key-works-not-yet = not yet: see what to mend
key-works-not-begun = nothing is asked yet
key-row-questions = Questions in all
key-row-mean = Questions per find, about
key-row-longest = On the longest way
key-row-mend = To mend
key-cannot-say = cannot be said yet
tried-not-yet = This is a trying-out copy: people asked some of its questions, or not all of it could be checked. Let somebody try it who does not know the answers.
tried-mend-first = This is a trying-out copy: something is to be mended first.
tried-it = We tried it, and it worked
tried-already = You tried this key as it is now, and it worked.
tried-not-after-all = We have not tried it after all
tried-moved = This key has changed since the page was shown.
tried-moved-remedy = Look at it again, and say it of the key as it is now.
key-others = { $count ->
    [0] Begin another key
   *[other] Lay two keys side by side, or begin another
}
key-compare-with = Beside “{ $name }”
key-own-words = These words are your own, so they stay when the words of the table change. From the table it would be: “{ $question }”
key-own-words-take = Take the words of the table
