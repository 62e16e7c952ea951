### The sheets on paper.

## Every page.

sheet-page-of = page { $page } of { $of }
sheet-draft = DRAFT
sheet-trying-out = trying-out copy
sheet-our-group = Our group's colour or number:
sheet-notes = Notes:
sheet-version = version { $version }
sheet-day = { $day } { $month } { $year }
sheet-january = January
sheet-february = February
sheet-march = March
sheet-april = April
sheet-may = May
sheet-june = June
sheet-july = July
sheet-august = August
sheet-september = September
sheet-october = October
sheet-november = November
sheet-december = December
sheet-key-to = { $count ->
    [one] A key to one kind
   *[other] A key to { $count } kinds
}
sheet-you-need = you need: { $part }

## Kinds and their pictures.

sheet-kind-number = kind { $number } ({ $name })
sheet-kind-no-name = kind { $number } (no name)
sheet-more-kinds = one of { $count } more kinds
sheet-no-name = no name
sheet-picture-of = Picture of { $kind }
sheet-stick-leaf = stick the leaf or the rubbing here
sheet-stick-it = stick it here
sheet-draw-it = draw it here
sheet-picture-not-read = This picture file could not be opened.
sheet-picture-too-large = This picture is too large. Make it smaller.
sheet-left-together = These are left together: { $sets }.
sheet-left-together-more = { $count ->
    [one] These are left together: { $sets }; and 1 more group.
   *[other] These are left together: { $sets }; and { $count } more groups.
}
sheet-newcomer-sentence = Does the sentence not fit? Then stop: you may have found a newcomer.
sheet-newcomer-look = Does it look wrong? Then stop: you may have found a newcomer.

## The key, question by question.

sheet-key = Key
sheet-title-key = { $title }: key
sheet-how-to = How to use this key
sheet-rule-start = Start at the first question. Read all of it before you answer.
sheet-rule-look = Look at several if you can, not only one. Measure; do not guess.
sheet-rule-word = A word you do not know? Look in the word list at the end, or ask.
sheet-rule-word-on-wall = A word you do not know? Look at “Words to look at” on the wall, or ask.
sheet-rule-cannot-tell = Can't tell? Go both ways, then compare where they come out.
sheet-rule-neither = Does neither answer fit? Go back to the question you came from.
sheet-before-you-touch = Before you touch anything
sheet-touch = Before you touch: this may be { $kinds }. Read the cautions first.
sheet-questions = Questions
sheet-first-question = There is no question in this key yet. Write the first one here:
sheet-write-question = Write the question here:
sheet-which-fits = Which of the two fits?
sheet-write-it = (write it here)
sheet-from = (from { $numbers })
sheet-go-to = go to { $number }
sheet-go-to-none = go to { $number } (there is no { $number })
sheet-where-to = Where to?
sheet-look-on = On { $answer }, check: { $looks }
sheet-shows = { $answer }: { $state }
sheet-look-yes = { $question } That should be yes.
sheet-look-no = { $question } That should be no.
sheet-write-sentence = How do you know it? Write a sentence:
sheet-words-in-key = Words in this key
sheet-what-we-noticed = What we noticed

## The chart.

sheet-chart = Chart
sheet-title-chart = { $title }: chart
sheet-key-not-large = A question of this key is too long for large print. Make it shorter.
sheet-chart-not-large = For large print this key needs larger paper.
sheet-read-cautions = Read the cautions in the key first: { $kinds }.
sheet-chart-empty = There is no question in this key yet. Draw the first ones here.
sheet-chart-too-large = This key has { $count } questions: too many for a chart. Use the key pages, or make one key for each part of the walk.
sheet-no-question-yet = (no question yet)
sheet-write-or-stick = write or stick it here
sheet-write-or-draw = write or draw it here
sheet-start-here = start here
sheet-no-way-here = no way leads here
sheet-from-page = { $letter }, from page { $page }
sheet-goes-on = goes on at page { $page }, { $letter }

## Words to look at.

sheet-words = Words
sheet-words-to-look-at = Words to look at
sheet-title-words = { $title }: words to look at
sheet-word-cards = Words as cards
sheet-title-word-cards = { $title }: words as cards
sheet-word-of-our-own = a word of our own:
sheet-not = not: { $caption }
sheet-not-word = not { $word }: { $caption }

## Everything for today.

sheet-title-today = { $title }: everything for today
sheet-today = Today
sheet-today-adult = Today: for the adult
sheet-is-draft = This key is a draft. Do not hand it out before it is mended.
sheet-is-trying-out = This key is a trying-out copy. Let somebody try it first.
sheet-copies = How many copies of what
sheet-column-sheet = Sheet
sheet-column-what-for = What for
sheet-column-pages = Pages
sheet-column-copies = Copies
sheet-column-paper = Paper
sheet-paper-in-all-alike = { $count ->
    [one] 1 sheet of paper in all.
   *[other] { $count } sheets of paper in all.
}
sheet-paper-in-all = { $count } sheets of paper in all, printed on one side; { $both } if your printer prints both sides.
sheet-to-cut = To cut out: { $sheets }.
sheet-for-the-adults = for the adults, to go through
sheet-visit-and-answers = Visit and answers
sheet-for-who-leads = for the adult who leads
sheet-helper-and-labels = Cards and numbers
sheet-to-check-by = to check by
sheet-cut-before = cut out before you go
sheet-one-a-group = one for each group
sheet-for-the-wall = one for the wall: on A3 if you can
sheet-wall-or-table = for the wall or the table
sheet-to-write-on = one for each group, to write on
sheet-counted = Counted for { $children } children in { $groups } groups, and one adult with each group.
sheet-counted-assumed = Nobody said how many children come. Counted for { $children } children in { $groups } groups, and one adult with each group.
sheet-counted-no-groups = Nobody said how many groups there are. Counted for { $children } children in { $groups } groups of four, and one adult with each group.
sheet-counted-no-children = Nobody said how many children come. Counted for { $groups } groups of four, { $children } children, and one adult with each group.
sheet-order = In this order
sheet-step-number = Before: lay a number beside each find and note it on the answer list.
sheet-step-cautions = Read the cautions in the key aloud. Say what nobody touches.
sheet-step-key = Give each group the key. They follow it with each number and write on the list where they come out.
sheet-step-tick = Tick the kinds at the foot of the list together. What has no tick got lost. At which question?
sheet-step-own = With time left: each group makes its own key and swaps it.
sheet-cautions = Cautions
sheet-many-cautions = { $count ->
    [one] 1 kind carries a caution. Read the box “Before you touch anything” on the first page of the key before you go.
   *[other] { $count } kinds carry a caution. Read the box “Before you touch anything” on the first page of the key before you go.
}
sheet-for-myself = For myself
sheet-before-go = Before you go
sheet-rules-first = The rules of your school, of your employer and of the land's owner come first.

## To try the key out.

sheet-title-try-out = { $title }: try-out sheets
sheet-title-set = { $title }: our set
sheet-answers = Answers, for the adult
sheet-answers-about = The right way of every kind. A kind with several ways varies, or nobody has looked at it there: each way is right. Do not hand this sheet out.
sheet-column-kind = Kind
sheet-column-answers = Answers
sheet-column-number = Number
sheet-at-once = at once
sheet-more-answers = { $count ->
    [one] and so on, 1 more answer in the key
   *[other] and so on, { $count } more answers in the key
}
sheet-not-out = { $way }: it does not come out
sheet-lost = no way leads to it: it is lost
sheet-more-ways = { $count ->
    [one] and 1 more way: follow it in the key
   *[other] and { $count } more ways: follow them in the key
}
sheet-to-mend = What to mend in the key
sheet-own-key = Our own key
sheet-own-key-about = Sort your kinds into two heaps. Write the question that separates them. Then write where each side goes: a number, or a name.
sheet-from-blank = (from ____)
sheet-labels = Number labels
sheet-labels-about = Cut out. Lay one number beside each find. Only the adult keeps the list of names.
sheet-found-at = found at
sheet-tried = Trying out the key
sheet-tried-about = Follow the key with each find. Write down where you come out.
sheet-tried-number = No.
sheet-tried-came-out = It came out as
sheet-tried-fits = The sentence fits
sheet-tried-looks = It looks right
sheet-tried-stopped = Question that stopped us
sheet-tried-word = Word we did not know
sheet-comes-out = Does it come out?
sheet-tick-about = Tick a kind when it comes out. No tick at the end: it got lost.
