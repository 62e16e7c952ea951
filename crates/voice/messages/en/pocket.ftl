### The page that holds everything: which collections are kept in this browser, and copies of them.

pocket-title = Your collections
pocket-kept-here = Everything is kept in this browser, on this machine. Nothing is sent anywhere.
pocket-none-yet = There is no collection here yet.
pocket-list = Go on with
pocket-kinds = { $count ->
    [one] one kind
   *[other] { $count } kinds
}
pocket-empty = nothing in it yet
pocket-opened = last open on { $day }
pocket-begin = Begin
pocket-begin-walk = Try an invented hedge walk
pocket-begin-walk-about = Twelve kinds and their key, to look around in. Everything in it is invented.
pocket-begin-empty = Begin a collection
pocket-begin-empty-about = Name your finds, say what you see on them, and make a key.
pocket-begin-copy = Open a copy
pocket-begin-copy-about = A file that “Save a copy” has made, here or elsewhere.
pocket-file = The file (its name ends in .zip)
pocket-remove = Remove a collection from this browser
pocket-remove-which = Which one?
pocket-remove-sure = Yes: it goes for good, with its pictures. I have a copy, or need none.
pocket-remove-do = Remove it
pocket-removed = “{ $title }” is no longer in this browser.
pocket-unsure = Nothing was removed.
pocket-unsure-remedy = Save a copy of it if you need one. Then tick the box and remove it.
pocket-gone = This collection is not in this browser any more.
pocket-gone-remedy = Another window may have removed it. Choose another one, or open a copy.
pocket-others = Other collections
pocket-no-copy = No copy of this collection was saved yet:
pocket-old-copy = The last copy is from { $day }:
pocket-save = save one
pocket-may-be-cleared = This collection is kept in this browser only, and browsers sometimes clear what they keep. Save a copy after each visit.
pocket-last-copy = The last copy was saved on { $day } as { $file }; look in the folder for downloads.
pocket-never-copied = No copy was saved from this browser yet.
pocket-not-over = Nothing was opened: this collection would be gone.
pocket-not-over-remedy = Open a copy at “Other collections”: it is then beside this one.
pocket-memory-only = This browser keeps nothing here, so what you do is in memory only. Save a copy before you close the page.
pocket-memory-held = A window with an older Spinney is open and holds what this browser keeps, so what you do here is in memory only. Close that window, then load this page again.
pocket-memory-newer = A newer Spinney has kept collections in this browser, and this one cannot open them. What you do here is in memory only. Open the newer file.
pocket-promised = The browser has promised to keep this collection until you remove it. Save a copy after each visit all the same: a machine can break.
pocket-not-promised = This one was asked to keep it for good, and has not promised to.
pocket-unreadable = “{ $title }” cannot be read: something in this browser's storage is damaged, or a newer Spinney has written it.
pocket-unreadable-remedy = Open it with the newest Spinney, or open the last copy of it.
pocket-trial-key = Our key
pocket-share = Share a copy …
