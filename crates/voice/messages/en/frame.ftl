### What every screen has.

skip = To the work
nav = Screens
nav-finds = Our finds
nav-heaps = Heaps
nav-table = Table
nav-key = Key
nav-words = Words
nav-try = Try it
nav-print = Print
nav-done = What we did
margin = Beside the work
foot = Spinney works on this machine alone: nothing is sent anywhere.
foot-rules = No key makes anything safe to touch, pick or eat. Local rules and trained people decide.
untitled = A collection without a title
undo = Undo
redo = Do it again
good-to-know = { $count ->
    [one] 1 thing that is good to know
   *[other] { $count } things that are good to know
}
severity-mend = mend this
severity-look = worth a look
severity-know = good to know
not-found = There is no such page
not-found-remedy = It may have been undone, or removed in another window.
refused = That was not done
go-back = Go back
what-you-typed = What you typed
which-key = Which key?
which-key-show = Show it
which-key-finished = finished

form-no-head = Spinney cannot tell which page this form came from.
form-no-head-remedy = Nothing was changed. Go back, load the page again, and send it once more.
form-other = Since this page was shown, something was removed for good or another collection was opened.
form-other-remedy = Nothing was changed. Go back, load the page again, and do it there.
# { $name } is what it is called now.
form-renamed = Someone changed the name in another window. The name is now: { $name }
form-renamed-remedy = Nothing was changed. Go back, look at the page again, and see whether you still mean it.
