### Last season's key for this season's table: what stayed, what changed.

revise-changed = What changed
revise-price = What changing less or more would cost
revise-in-short = { $count ->
    [0] Last season's key still works and stays as it is: about { $questions } per find, at most { $longest }; { $against }.
    [one] Last season's key with one question changed: about { $questions } per find, at most { $longest }; { $against }.
   *[other] Last season's key with { $count } questions changed: about { $questions } per find, at most { $longest }; { $against }.
}
revise-best = no key from this table takes less
revise-best-so-far = as far as was looked, no key from this table takes less
revise-saves = the best key from this table saves { $questions } per find
revise-saves-so-far = as far as was looked, the best key from this table saves { $questions } per find
revise-proved = Proved: every key with fewer changes takes more than { $questions } per find beyond the best.
revise-stopped-budget = { $count ->
    [one] Not proved: the search stopped after one heap; fewer changes may do. A larger --budget goes on.
   *[other] Not proved: the search stopped after { $count } heaps; fewer changes may do. A larger --budget goes on.
}
revise-stopped-memory = { $count ->
    [one] Not proved: after one heap nothing more could be remembered; fewer changes may do.
   *[other] Not proved: after { $count } heaps nothing more could be remembered; fewer changes may do.
}
revise-stopped-overflow = Not proved: the counts in this table need larger numbers than exact arithmetic has here. Write rounder counts, or fill in unknown cells.
revise-new-kinds = New in the table: { $kinds }.
revise-gone-kinds = No longer in the table, or spelt differently: { $kinds }.
revise-kept = Kept as they were: { $questions }.
revise-asked-otherwise = Asked differently: { $number }. { $after } Before: { $before }
revise-added = New: { $number }. { $question }
revise-struck = Struck out: { $number } of the old key. { $question }
revise-was = { $now } (was { $was })
revise-columns-questions = questions
revise-columns-changed = changed
revise-columns-effort = questions per find (a hard question counts for two or three)
revise-from-none-to = 0 to { $most }
revise-not-possible = not possible: no key that tells these kinds apart is so like the old one
revise-this-key = this key
revise-as-good = as good as the best key
revise-best-found = the best key that was found
revise-not-proved = (not proved: less may do)
revise-allow-more = For fewer changes allow more: --loss { $loss } gives the key with { $changes }.
