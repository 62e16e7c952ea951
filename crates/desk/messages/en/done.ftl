### What we did.

done-empty = Nothing was done yet. Everything you do is kept here, and all of it can be undone.
done-older = { $count ->
    [one] and one thing before that
   *[other] and { $count } things before that
}
done-versions = Named states
done-name-version = A name for what it is like now, such as “tried with class 4, 12 October”
done-keep-version = Keep this name
