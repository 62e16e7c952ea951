### A copy of the collection.

saved-title = A copy of your collection
saved-save = Save a copy
saved-save-help = One file with everything: finds, pictures, table, keys, and all that “What we did” remembers. Keep it on a memory stick or send it to a colleague.
saved-nothing = There is nothing to save yet.
saved-open = Open a copy
saved-open-help = Choose a file that “Save a copy” has made.
saved-file = The file (its name ends in .zip)
saved-sure = Yes: what is here now goes, and the copy takes its place
saved-opened = The copy is open.
saved-lost = { $count ->
    [one] One picture could not be read and was left out.
   *[other] { $count } pictures could not be read and were left out.
}
saved-in-the-way = This collection is kept in a file, and a copy would write over it.
saved-in-the-way-remedy = Close Spinney, start it again by a double-click, and open the copy there.
saved-moved = Someone changed the collection in another window. Nothing was opened.
saved-moved-remedy = Go back, look at the page again, and choose the file once more.
saved-unsure = Nothing was opened: the collection here is in memory only and would be gone.
saved-unsure-remedy = Save a copy of it if you need it. Then tick the box and open the other.
saved-no-file = No file was chosen.
saved-no-file-remedy = Choose a file that “Save a copy” has made.
saved-no-copy = This file is not a copy of a collection.
saved-no-copy-remedy = Choose a file that “Save a copy” has made; its name ends in .zip.
saved-too-large = This is larger than a copy may be.
saved-too-large-remedy = Take some pictures out first. Or use the Spinney program: “spinney pack” and “spinney unpack” take twice as much.
saved-unreadable = { $count ->
    [one] One picture cannot be read. It would be missing from the copy.
   *[other] { $count } pictures cannot be read. They would be missing from the copy.
}
saved-unreadable-remedy = Remove them for good first. Then the copy holds everything that is left.
saved-damaged = This copy is damaged.
saved-damaged-remedy = Fetch it again: it was cut off or changed on the way. If that does not help, the Spinney program saves what can be read of it: “spinney rescue”.
saved-newer = A newer Spinney has made this copy.
saved-newer-remedy = Open it with the newer Spinney.
memory-only = Kept in memory only:
memory-only-save = save a copy before you close
