### What was found in a key: its numbers, where kinds come out, and what they cannot answer.

## The key as a tree.
finding-number-twice = { $count ->
   *[other] { $count } questions have the number { $number }.
}
finding-number-twice-remedy = { $count ->
   *[other] Give each question a number of its own, and mend what leads there.
}
finding-number-twice-meant = The second { $number } is probably { $meant }: an answer leads to { $meant }, and no question has that number.
finding-number-missing = { $count ->
    [one] { $from } leads to { $to }, but there is no question { $to }.
   *[other] { $from } lead to { $to }, but there is no question { $to }.
}
finding-number-missing-remedy = { $count ->
   *[other] Write question { $to }, or put a name or another number at { $from }.
}
finding-number-perhaps = Perhaps { $meant } is meant: no answer leads to question { $meant } now.
finding-gets-lost = { $count ->
    [one] { $kinds } gets lost there.
   *[other] { $kinds } get lost there.
}
finding-numbers-skip = The numbers do not run 1, 2, 3: question { $number } is where { $expected } is expected.
finding-numbers-skip-remedy = Number the questions down the page; a class finds its way faster.
finding-nothing-written = After { $after } at question { $question } nothing is written.
finding-nothing-written-remedy = Write the name of a kind there, or the number of the next question.
finding-loop = { $from } leads back to question { $to }, so you go round in a circle.
finding-loop-remedy = Put a name or a later number there.
finding-unreachable = No answer leads to question { $question }.
finding-unreachable-named = { $count ->
    [one] No answer leads to question { $question }, and so { $kinds } never comes out.
   *[other] No answer leads to question { $question }, and so { $kinds } never come out.
}
finding-unreachable-remedy = Send an answer to question { $question }, or take that question out.
finding-back-wrong = The number in brackets at question { $question } is { $back }, but the question before it is { $from }.
finding-back-wrong-remedy = Write { $question } ({ $from }) there.
finding-ways-meet = Several ways lead to question { $question }: from questions { $from }.
finding-ways-meet-remedy = That is allowed: it helps somebody who was not sure. If you did not mean it, check the numbers.
finding-same-both-ways = At question { $question } both answers lead to the same place.
finding-same-both-ways-remedy = Take the question out, or change one of its numbers.
finding-too-many-ways = There are too many ways through this key to follow all of them for { $kinds }.
finding-too-many-ways-remedy = Let fewer ways meet again, fill in empty cells, or make a smaller key.

## Where kinds come out.
finding-never-comes-out = { $kind } never comes out of this key.
finding-never-comes-out-reads = { $kind } never comes out of this key: whoever holds it reads { $ends }.
finding-never-comes-out-reads-perhaps = { $kind } never comes out of this key: as far as the questions are linked, whoever holds it reads { $ends }.
finding-never-comes-out-remedy = Add a question there that tells { $kind } from the others.
finding-no-questions = The key has no questions, so no kind comes out.
finding-no-questions-remedy = Begin with a question about { $about }: it tells some of the kinds apart.
finding-comes-out = comes out at { $ends }
finding-comes-out-nowhere = never comes out from there
finding-wrong-place = By the table, at question { $question } { $ways }.
finding-wrong-place-way = { $kind } answers { $answer } and { $out }
finding-wrong-place-exchanged = Perhaps yes and no have changed places. If not, look at the table again.
finding-wrong-place-remedy = Look at { $about } of { $kinds } again. If the table is right, write { $kinds } after { $answer } as well, with a question before that.
finding-varies = Question { $question } takes { $about } to be always the same: { $ways }.
finding-varies-is = { $kind } varies, and where it is { $form } it { $out }
finding-varies-has = { $kind } varies, and where it has { $form } it { $out }
finding-varies-remedy = Let { $kinds } come out after { $answer } as well, or ask here about something else.
finding-second-place = { $kind } has a second place after { $answer } at question { $question }. You only get there with a wrong “{ $misread }” at question { $wrong }.
finding-second-place-here = { $kind } has a second place after { $answer } at question { $question }, which is the wrong answer for it.
finding-second-place-remedy = That is allowed: it helps somebody who was not sure. If you did not mean it, cross that name out.
finding-end-unreached = No kind comes out at { $names } after { $answer } at question { $question }: no kind that gets there answers { $answer }.
finding-end-unreached-remedy = Take that end out, or let { $names } answer { $answer } here.
finding-end-unreached-only-one = Only one kind gets here at all.
finding-end-guessed = { $names } never comes out after { $answer } at question { $question }, where its name is. Only { $kinds } can, because nobody has looked at { $cells }.
finding-end-guessed-remedy = Write { $kinds } there, or look at { $kinds } and fill in { $cells }.
finding-parts-nothing = Everything that gets to question { $question } answers { $answer }: { $kinds }.
finding-parts-nothing-remedy = Take the question out, or ask one that tells these kinds apart.
finding-named-too-often = The end after { $answer } at question { $question } names { $kinds } as well, but by the table that is never so.
finding-named-too-often-remedy = Cross { $kinds } out there.
finding-could-be-parted = The end after { $answer } at question { $question } names { $kinds } together, but they differ in { $about }.
finding-could-be-parted-by = The end after { $answer } at question { $question } names { $kinds } together, but { $about } tells them apart.
finding-could-be-parted-remedy = Ask about { $about } there, if you want them apart.

## What kinds cannot answer, or not surely.
finding-both-leads = { $count ->
    [one] At question { $question } { $kinds } fits both leads in { $about }.
   *[other] At question { $question } { $kinds } fit both leads in { $about }.
}
finding-both-leads-remedy = { $count ->
   *[other] Word the leads so that only one of them can be true.
}
finding-neither-lead = { $count ->
    [one] At question { $question } { $kinds } fits neither lead in { $about }.
   *[other] At question { $question } { $kinds } fit neither lead in { $about }.
}
finding-neither-lead-remedy = { $count ->
   *[other] Word the leads so that one of them is always true.
}
finding-does-not-have = { $count ->
    [one] Question { $question } { $asks }, but { $kinds } gets here and has none.
   *[other] Question { $question } { $asks }, but { $kinds } get here and have none.
}
finding-does-not-have-remedy = { $count ->
   *[other] Ask it where { $kinds } can no longer come, or ask about something else.
}
finding-may-not-have = Question { $question } { $asks }, but { $kinds } may have none: it depends on { $governor }.
finding-may-not-have-remedy = Ask about { $governor } before this question.
finding-another-column = another column
finding-nobody-recorded = Question { $question } { $asks }, but nobody has looked at { $kinds } for it yet.
finding-nobody-recorded-lost = { $kind } is lost if the answer is { $answer }.
finding-nobody-recorded-remedy = Look at { $kinds } and fill in { $about }, or move the question.
finding-nobody-recorded-say = Look at { $kinds } and say yes or no to it, or move the question.
finding-threshold-inside = { $count ->
   *[other] Question { $question } has its number, { $at }, inside the { $about } of { $ranges }: some answer yes and some no.
}
finding-threshold-inside-remedy = { $count ->
    [one] Choose a number outside the range of { $kinds }.
   *[other] Choose a number outside the ranges of { $kinds }.
}
finding-threshold-near = Question { $question } asks at { $at }, which is nearer than { $margin } to the { $about } of { $ranges }: two people who measure may disagree.
finding-threshold-near-remedy = Choose a number in the middle between the ranges, or ask about something else.
finding-thin-evidence = Question { $question } splits off { $kind } by its { $about }, which was looked at only once.
finding-thin-evidence-remedy = Look at { $about } on more of { $kind }, from more than one place.

## A key that was read, in words or from a file.
finding-no-numbered-question = No numbered question was found in this text.
finding-no-numbered-question-remedy = Begin every question with its number: 1. Is it green? Yes -> 2, No -> robin
finding-only-first-questions = Only the first { $read } questions of this key were read.
finding-only-first-lines = Only the first { $read } lines of this key were read.
finding-several-keys = Make several keys of it, one for each part of the walk.
finding-line-too-long = This line is longer than { $letters } letters. The rest was not read.
finding-line-too-long-remedy = Write each question on a line of its own, in one sentence.
finding-line-neither = Line { $line } is neither a question, a lead nor an answer.
finding-line-neither-remedy = Begin a question with its number and an answer with yes or no, or take the line out of the key.
finding-lead-too-many = Question { $question } has { $what }, on line { $line }.
finding-lead-too-many-remedy = A question has two ways on. Make a new question of the third, or correct the number before the line.
finding-a-third-lead = a third lead
finding-yes-twice = “yes” twice
finding-no-twice = “no” twice
finding-leads-nobody-knows-where = Question { $question } leads to “{ $written }”, and nobody can tell where that is.
finding-leads-nobody-knows-where-remedy = Write one number or one name behind each answer: Yes -> 5, No -> robin
finding-name-not-sure = Question { $question } ends at “{ $written }”. The table has { $near }.
finding-name-not-sure-remedy = Write it as in the table, or, if it means { $first }, put this line into the links file: name { $written } = { $first }
finding-name-unknown = Question { $question } ends at “{ $written }”, which is no kind of the table.
finding-name-unknown-remedy = Correct the name, or add the kind to the table.
