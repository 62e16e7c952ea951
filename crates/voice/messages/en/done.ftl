### What we did.

done-empty = Nothing was done yet. Everything you do is kept here, and all of it can be undone.
done-list = The latest on top
done-older = { $count ->
    [one] One thing before that
   *[other] { $count } things before that
}
done-newer = Later things
done-undo-after = { $count ->
    [one] Undo the one thing after this
   *[other] Undo the { $count } things after this
}
done-undo-all = Undo everything
done-undone = Undone
done-undone-help = This can come back until something else is done.
done-bring-back = { $count ->
    [one] Bring this back
   *[other] Bring back all { $count } down to this
}
done-more-undone = { $count ->
    [one] and one thing more
   *[other] and { $count } things more
}
done-moved-on = Something else was done just now, perhaps in another window.
done-moved-on-remedy = Look at “What we did” as it is now, then choose once more. Nothing was undone.
done-just-undone = Undone: { $what }
done-just-redone = Done again: { $what }
done-would-undo = “Undo” would take this back now: { $what }
done-would-redo = “Do it again” would bring this back now: { $what }
done-just-now = just now
done-minutes-ago = { $count ->
    [one] a minute ago
   *[other] { $count } minutes ago
}
done-hours-ago = { $count ->
    [one] an hour ago
   *[other] { $count } hours ago
}
done-days-ago = { $count ->
    [one] a day ago
   *[other] { $count } days ago
}
done-versions = Saved versions
done-no-versions = Before you try something, save this version under a name. You can look at it later, compare, and go back.
done-name-version = A name for what it is like now, such as “tried with class 4, 12 October”
done-keep-version = Keep this name
done-look-at = Look at it
done-since-then = What changed in the key since
done-same-as-now = It is like this now.
done-go-back = Go back to this
done-go-back-help = Everything becomes as it was then. What was done since stays in the list, and going back can itself be undone.
done-kinds = { $count ->
    [one] 1 kind
   *[other] { $count } kinds
}
done-characters = { $count ->
    [one] 1 thing to look at
   *[other] { $count } things to look at
}
done-key = Key: { $name }
done-many-versions = A collection has at most { $count } saved versions.
done-many-versions-remedy = Look at one that nobody needs any more, and give up its name.
done-unname = Give up this name
done-unname-why = Only the name goes: nothing that was done changes, and the list stays. “Undo” does not bring the name back.
done-no-such-version = There is no saved version with that name any more.
done-no-such-version-remedy = Choose one from the list.
done-between = What changed in the key
done-from = From
done-to = To
done-now = as it is now
done-which-key = Key
done-compare = Compare
done-no-key = Neither of the two has a key yet.
done-no-change = Nothing changed in the key.
done-kept = { $count ->
    [one] One question is asked as before.
   *[other] { $count } questions are asked as before.
}
done-effort = A find takes about { $new } questions now; it took about { $old }.
done-questions-gone = No longer asked
done-questions-new = New questions
done-questions-fewer = Asked at fewer places than before
done-questions-more = Asked at more places than before
done-begins = It begins with “{ $new }” now, and no longer with “{ $old }”.
done-questions-reworded = Asked in other words, or with another number
done-kinds-gone = Kinds that left
done-kinds-new = Kinds that came
done-kinds-renamed = Kinds with another name
done-from-to = “{ $old }” is “{ $new }” now
