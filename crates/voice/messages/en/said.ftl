### What was done, in a person's words.

said-undo = Undone
said-redo = Done again
said-hold = Went to another place in the list
said-back-to = Back to the saved version “{ $name }”
said-version = Saved this version as “{ $name }”
said-unname = Gave up the name of a saved version
said-nothing = Nothing changed
said-kinds = { $count } kinds were added
said-measured = Leaves were measured in a scan: { $kinds }
said-and-more = { $count ->
    [one] { $first }, and one thing more
   *[other] { $first }, and { $count } things more
}
said-add-nameless = { $kind } was added, without a name yet
said-add-kind = { $kind } was added
said-name-kind = { $kind } is called “{ $name }” now
said-describe = { $what }: “{ $text }”
said-remove-kind = { $kind } was taken out
said-merge = { $gone } turned out to be { $kept }
said-picture = A picture of { $kind } was added
said-picture-away = A picture of { $kind } was taken out
said-add-character = “{ $name }” is something to look at now
said-name-character = “{ $old }” is called “{ $name }” now
said-remove-character = “{ $name }” was taken out of the table
said-clear-cell = { $kind }, { $character }: cleared
said-cell = { $kind }, { $character }: “{ $text }”
said-cell-by = { $source } says of { $kind }, { $character }: “{ $text }”
said-rename-state = “{ $from }” is written “{ $to }” now
said-scene = The head of the sheets: “{ $text }”
said-start-key = The key “{ $name }” was begun
said-keys = { $count } keys were begun, one for each group
said-rename-key = The key “{ $old }” is called “{ $name }” now
said-remove-key = The key “{ $name }” was taken out
said-wish-away = The key “{ $name }” does not ask for that any more
said-wish = The key “{ $name }” is made for: { $text }
said-finish = The rest of the key “{ $name }” is found from the table
said-tried = The key “{ $name }” was tried, and it worked
said-not-tried = The key “{ $name }” was not tried after all
said-unfinish = The rest of the key “{ $name }” is left to the group
said-all-kinds = The key “{ $name }” is for all kinds again
said-wish-group = The key “{ $name }” belongs to: { $text }
said-touch = In the key “{ $name }”, questions that need touching may come at any place
said-no-touch = In the key “{ $name }”, nobody is sent to touch what may hurt
said-wish-never = The key “{ $name }” never asks about: { $text }
said-ask = “{ $name }” asks: { $words }
said-reword = “{ $name }” asks in other words: { $words }
said-call = { $who } calls { $kind } “{ $name }”
said-call-away = { $who } calls { $kind } as we do
said-take-out = “{ $name }” does not ask “{ $words }” any more
said-sort-yes = { $kind } says yes
said-sort-no = { $kind } says no
said-sort-both = { $kind } varies: both ways
said-sort-back = { $kind } is in the middle again
