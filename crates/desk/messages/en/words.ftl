### Words.

words-no-key = The words come from a key: those that its questions say, and no others. Begin a key first.
words-none = This key says no word that needs explaining.
words-count = { $count ->
    [one] One word that pupils meet in this key and may not know.
   *[other] { $count } words that pupils meet in this key and may not know.
}
words-look-alike = Not to be mixed up with
words-question = Question { $number }: { $text }
words-confirming = { $kind }: { $text }
words-unexplained = Words to know without plain words
words-unexplained-remedy = Nobody has put these into plain words yet. Say it in the question itself, or show the real thing.
words-draw-smooth = smooth edge
words-draw-unlobed = unlobed
words-draw-oval = egg-shaped
words-draw-toothed = toothed
words-draw-double = double-toothed
words-draw-spiny = spiny
words-draw-lobed = lobed
words-draw-heart = heart-shaped
words-draw-needle = needle
words-draw-feather = leaflets like a feather
words-draw-hand = leaflets like a hand
words-draw-opposite = opposite
words-draw-alternate = alternate
words-draw-whorl = whorl
words-draw-no-stalk = without a stalk
words-draw-blade = blade
words-draw-stalk = leaf stalk
words-draw-edge = edge
words-draw-midrib = midrib
words-draw-veins = side veins
words-draw-tip = tip
words-draw-base = base
