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
words-unexplained = Words that nobody has explained yet
words-unexplained-remedy = Nobody has put these into plain words yet. Say it in the question itself, or show the real thing.
words-draw-smooth = smooth edge
words-draw-unlobed = unlobed
words-draw-toothed = toothed
words-draw-double = double-toothed
words-draw-spiny = spiny
words-draw-heart = heart-shaped
words-draw-feather = leaflets like a feather
words-draw-hand = leaflets like a hand
words-draw-opposite = opposite
words-draw-alternate = alternate
words-draw-whorl = whorl
words-draw-blade = blade
words-draw-stalk = leaf stalk
words-draw-edge = edge
words-draw-midrib = midrib
words-draw-veins = side veins
words-draw-tip = tip
words-draw-base = base
words-draw-egg = egg-shaped
words-draw-oval = oval
words-draw-toothed-large = toothed
words-draw-wavy = wavy
words-draw-hand-lobed = lobed like a hand
words-draw-lobe = one lobe
words-draw-tooth = one tooth
words-draw-gap = a gap
words-draw-needles = needles
words-draw-pointed-tip = pointed tip
words-draw-round-tip = rounded tip
words-draw-lopsided = lopsided
words-draw-even = both sides alike
words-draw-one-leaf = one leaf: all of it
words-draw-one-leaflet = one leaflet: no bud
words-draw-bud = bud above the stalk
words-draw-gall = gall
words-draw-paired-leaflets = leaflets in pairs
words-draw-vein-pair = one pair of side veins
words-draw-twig = twig
words-draw-lobed = lobed like a feather
