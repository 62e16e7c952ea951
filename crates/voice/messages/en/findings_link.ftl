### What was found of questions that are to be linked to a table, of the files that link them, of
### wishes that could not be fulfilled, and of files that could not be used.

## A question that is not linked, or not surely.
finding-link-no-ratio = Question { $question } compares { $one } with { $other }, and the table has no column for that.
finding-link-no-ratio-remedy = Add a row to the sheet `characters` whose cell under `ratio of` is `{ $one } / { $other }`; it is then worked out.
finding-link-speaks-of = Question { $question } speaks of "{ $word }", and no column of the table is about that.
finding-link-speaks-of-remedy = Add a column for it, or ask about something that the table has.
finding-link-not-yes-or-no = Question { $question } cannot be answered with yes or no.
finding-link-not-yes-or-no-remedy = Begin with Is, Are, Does, Do, Has or Have.
finding-link-two-things = Question { $question } asks two things at once.
finding-link-two-things-remedy = Ask one of them here, and the other in a question of its own.
finding-link-two-choices = Question { $question } offers two choices, so "yes" is not an answer.
finding-link-two-choices-remedy = Ask about one of them.
finding-link-one-of-two = Question { $question } asks for one of two numbers of { $about }, which is neither that much or more nor less.
finding-link-one-of-two-remedy = Ask for one threshold, in a gap of the table: Is the { $about } … or more?
finding-link-exactly = Question { $question } asks for exactly one number of { $about }, and the table has more as well as fewer.
finding-link-exactly-remedy = Ask for that number or more, or for fewer.
finding-link-several-numbers = Question { $question } has several numbers in it.
finding-link-several-numbers-remedy = Ask for one of them at a time.
finding-link-every-state = Question { $question } asks for everything that { $about } can be, so that every kind says yes.
finding-link-every-state-remedy = Ask for one of the states.
finding-link-no-measure = Question { $question } says "{ $word }", which is no measure.
finding-link-no-measure-remedy = Say how much: … is the { $about } 30 { $unit } or more?
finding-link-no-measure-at-all = Say how much: … or ask for something that can be counted or named.
finding-link-may-ask = Question { $question } may ask for { $what }.
finding-link-or-for = { $before }, or for { $next }
finding-link-may-ask-remedy = Put the line that is meant into the links file, for instance: { $line }
finding-link-says-not = Question { $question } says "not" in a way that may mean { $what }.
finding-link-no-unit = The number in question { $question } has no unit. { $may }
finding-link-no-unit-remedy = Write { $unit }, or what it is measured in, behind the number; or put the line that is meant into the links file: { $line }
finding-link-asks-both = Question { $question } asks two things at once: { $first }, and { $second }.
finding-link-asks-both-remedy = Ask one of them here and the other in a question of its own. If only one is meant, put its line into the links file, for instance: { $line }
finding-link-no-words = Question { $question } has no words.
finding-link-no-words-remedy = Write what is asked there.
finding-link-names-a-kind = Question { $question } asks for { $kind } by name ("{ $name }"), so only somebody who knows it can answer.
finding-link-names-a-kind-remedy = Ask for something that can be seen on { $kind } and not on the others.
finding-link-nothing-there = Question { $question } speaks of { $about }, but of nothing the table has there.
finding-link-can-whether = Ask only whether it is so, as the heading says it: { $about }? If something else is meant, add a column for it.
finding-link-can-states = Ask for one of its states: { $states }.
finding-link-can-count = Ask for a number of them or more.
finding-link-can-measure = Ask for a number of { $unit } or more.
finding-link-nothing = Question { $question } asks for nothing that the table speaks of.
finding-link-nothing-remedy = Add a column for it, or put a line into the links file: question { $question }: { $example } = … (or: question { $question }: nothing in the table)
finding-link-edge = edge
finding-link-not-in-table = Question { $question } asks for { $what }, which the table does not have.
finding-link-not-in-table-remedy = Take the table the key was made from, or link the question in a links file.
finding-link-named = "{ $name }"
finding-link-this-of = this of "{ $name }"

## The file that says what questions mean.
finding-links-no-question = The links file speaks of question { $question }, which the key does not have.
finding-links-no-question-remedy = Correct the number in the links file, or take the line out.
finding-links-unread = Line { $line } of the links file cannot be read: "{ $text }".
finding-links-unread-remedy = Write it like this: question 3: edge = toothed
finding-links-again = Line { $line } of the links file says again what question { $question } means; the first line counts.
finding-links-again-remedy = Take one of the two lines out.
finding-links-no-equals = Line { $line } of the links file has no = sign: "{ $text }".
finding-links-no-equals-remedy = Write it like this: name Hasel = { $kind }
finding-links-no-such-kind = Line { $line } of the links file names a kind that is not in the table: "{ $text }".
finding-links-no-such-kind-remedy = Write it like this: name Hasel = { $kind }
finding-links-no-kind = Line { $line } of the links file names no kind.
finding-links-no-kind-remedy = Write it like this: name Hasel = { $kind }
finding-links-hazel = hazel
finding-links-nothing-asked = Line { $line } of the links file does not say what is asked: "{ $text }".
finding-links-nothing-asked-remedy = Write the character, then = and a state, or >= and a number.
finding-links-number-of-words = Line { $line } of the links file asks a number of { $about }, whose states are words.
finding-links-number-of-words-remedy = Write: { $instead }
finding-links-no-such-column = Line { $line } of the links file names a character that the table does not have: "{ $text }".
finding-links-no-such-column-remedy = The table has: { $known }.
finding-links-no-such-state = Line { $line } of the links file asks for a state { $about } does not have: "{ $text }".
finding-links-no-such-state-remedy = { $about } has: { $known }.
finding-links-not-some-states = Line { $line } of the links file must name some of the states of { $about }, not all.
finding-links-not-some-states-remedy = { $about } has: { $known }.
finding-links-number-unread = Line { $line } of the links file has a number that cannot be read: "{ $text }".
finding-links-number-unread-remedy = Write { $column } >= and then a number, { $how }.
finding-links-number-unfit = Line { $line } of the links file gives { $about } a number that does not fit it.
finding-links-number-unfit-remedy = Write { $column } >= and then a number, { $how }.
finding-links-in-unit = in { $unit }
finding-links-in-figures = in figures
finding-links-exactly = Line { $line } of the links file asks whether { $about } is exactly { $number }. A question asks for that much or more, or for less.
finding-links-exactly-remedy = Write: { $least } (or, for less than that: { $below })

## A key from a file of ours.
finding-file-remedy = Take the table that the key was made from, or build the key again.
finding-file-wishes = The wishes of this key name { $name }, which the table does not have.
finding-file-aim = the aim "{ $name }"
finding-file-early = neither a pair nor a kind
finding-file-hand = "{ $name }" in the hand
finding-file-season = the season "{ $name }"
finding-file-too-many-kept = More than { $most } questions were to be kept; the others were left out.
finding-file-too-many-kept-remedy = Keep the first few questions only, and build the key again.
finding-file-proof = The proof of this key speaks of "{ $name }", which the table does not have in this way.

## Wishes that could not be fulfilled.
finding-unmet = { $wish }: { $why }.
finding-unmet-question = "{ $words }" could not be kept where you wanted it
finding-unmet-order = { $about } could not be asked about among the first
finding-unmet-early = The wish that { $wish } could not be kept
finding-unmet-apart = { $one } and { $other } are told apart early
finding-unmet-out = { $kind } comes out first
finding-unmet-goal = "{ $goal }" could not be looked for
finding-aim-effort = the fewest questions per find
finding-aim-longest = no long way
finding-aim-right = the most finds at the right name
finding-aim-even = few new words at once
finding-aim-words = few different words
finding-aim-rulers = as little measuring as possible
finding-unmet-blocked = { $kind } is still there and has no clear answer to it
finding-unmet-blocked-remedy = Ask it further down, where { $kind } is gone, or fill in the { $about } of { $kind }.
finding-unmet-alike = all kinds that are left answer it alike
finding-unmet-alike-remedy = Leave it out: it separates nothing there.
finding-unmet-no-state = { $about } cannot be asked for that
finding-unmet-no-state-remedy = Use one of the words that are in the table.
finding-unmet-after = the question before it could not be kept
finding-unmet-after-remedy = Mend the question before it first.
finding-unmet-left-out = { $about } must not be asked about, or cannot be seen on what is in the hand
finding-unmet-left-out-remedy = Take back one of the two wishes.
finding-unmet-never = nothing that may be asked tells them apart
finding-unmet-never-remedy = Look for a difference between them and add it to the table.
finding-unmet-too-large = together with the wishes before it that needs larger numbers than exact arithmetic has here
finding-unmet-too-large-remedy = Wish for fewer things at once.
finding-unmet-together = Because of your wishes these are left together: { $pairs }.
finding-unmet-together-remedy = Look for a difference that may be asked, or take a wish back.
finding-unmet-pair = { $one } and { $other }
finding-unmet-more-pairs = { $count ->
    [one] { $count } more pair
   *[other] { $count } more pairs
}

## Pictures and files.
finding-picture = The picture { $picture } of { $kind } was left out: { $why }.
finding-picture-remedy = Put a PNG or JPEG file of that name beside the table. Without it there is an empty box.
finding-picture-damaged = The picture of { $kind } cannot be read and was left out.
finding-picture-damaged-remedy = Add it again at the screens. Without it there is an empty box.
finding-picture-too-many = all pictures together would take too much memory
finding-picture-elsewhere = it is not beside the table
finding-picture-no-file = there is no such file beside the table
finding-picture-too-large = it is larger than { $most } MiB
finding-picture-not-read = it is neither a whole PNG nor a whole JPEG file
finding-picture-pixels = it has too many pixels. Make it smaller
finding-file-not-there = it is not there, or nothing may be written in that place
finding-file-no-right = you do not have the right to do that there
finding-file-is-there = something of that name is there already
finding-file-not-a-folder = a part of its name is a file, not a folder
finding-file-is-a-folder = it is a folder
finding-file-read-only = nothing may be written on that disk
finding-file-full = the disk is full
finding-file-too-large = it is larger than a file may be there
finding-file-bad-name = that name is too long, or has a sign that no name may have
finding-file-in-use = another program uses it
finding-file-no-address = this machine has no such address
finding-file-no-answer = its disk does not answer
finding-file-closed = the other end was closed
finding-file-no-memory = there is not enough memory
finding-file-gone = it was moved or taken away
finding-file-disk-failed = the disk did not do what was asked of it
finding-file-disk-refused = the disk did not take what was written to it
finding-file-bad-place = its disk, or the place where it is, does not work as it should
finding-file-not-held = something in it is too large to be kept
finding-file-unknown = the computer gives no reason that Spinney knows

## Where a finding is.
place-line = line { $line }
place-question = question { $question }
place-table = table
place-key = key
