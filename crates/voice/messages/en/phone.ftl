### The page for a phone.

## Every screen.

phone-a-key = A key
phone-draft = DRAFT: mend this key before anybody uses it
phone-version = Version { $version }
phone-steps = Steps
phone-again = Back to the start

## The first screen.

phone-need = You need
phone-how-several = Look at several of them, not only one.
phone-how-measure = Read the question. Measure, do not guess.
phone-how-cannot-tell = Can't tell? Go both ways, then compare where they come out.
phone-how-sentence = At the end, read the sentence. It must fit.
phone-no-question = This key has no question yet.
phone-left-out = { $count ->
    [one] 1 picture is not on this page, so that it stays small enough for a phone. It is on the sheets.
   *[other] { $count } pictures are not on this page, so that it stays small enough for a phone. They are on the sheets.
}

## A question.

phone-yes = Yes
phone-no = No
phone-cannot-tell = I can't tell
phone-no-words = Nobody has written this question yet.
phone-go-to = go to question { $number }
phone-back-to = Back to
phone-question = question { $number }
phone-or = or
phone-what-is = What does this mean: { $words }?

## An end.

phone-should-be = This should be
phone-take-care = Take care.
phone-not-apart = This key cannot tell them apart.
phone-read-each = Read what it says of each.
phone-no-sentence = Nobody has written a sentence for this kind yet. Ask somebody who knows it.
phone-strange-name = This name is not in the table: ask whoever made the key.
phone-stops = The key stops here
phone-missing-question = question { $number }, which is missing
phone-no-such-question = The key says to go to question { $number }, but it has no question { $number }. Tell whoever made it.
phone-nothing-here = nothing is written here
phone-nobody-wrote = Nobody has written what comes after this answer. Tell whoever made the key.

## What the script says.

phone-still-be = It may still be
phone-suppose = Suppose: { $question } { $answer }.
phone-back-here = Back here
phone-fork = We go both ways.
phone-fork-suppose = You could not tell. We go both ways. Suppose for now:
phone-one-of = It may be one of these { $count }
phone-two = two
phone-three = three
phone-four = four
phone-which-sentence = Read the sentences. Which one fits?
phone-which-one = Compare them. Which one fits?
phone-no-sentence-fits = Does no sentence fit? Then stop: you may have found a newcomer.
phone-none-fits = Does none of them fit? Then stop: you may have found a newcomer.
phone-it-fits = It fits: { $name }
phone-circle = You have come round in a circle
phone-circle-why = The key leads back to a question you have answered. Tell whoever made it.
phone-only-one = Only one is left.
phone-one-of-many = It may still be one of { $count }.
phone-at-end = You have come to an end of the key.
phone-both-done = You have gone both ways to the end.
phone-read-aloud = Read aloud
phone-stop-reading = Stop reading
