### Wörter.

words-no-key = Die Wörter kommen aus einem Schlüssel: die seine Fragen sagen, und keine anderen. Beginnt zuerst einen Schlüssel.
words-none = Dieser Schlüssel sagt kein Wort, das man erklären müsste.
words-count = { $count ->
    [one] Ein Wort, dem Kinder in diesem Schlüssel begegnen und das sie vielleicht nicht kennen.
   *[other] { $count } Wörter, denen Kinder in diesem Schlüssel begegnen und die sie vielleicht nicht kennen.
}
words-look-alike = Nicht zu verwechseln mit
words-question = Frage { $number }: { $text }
words-confirming = { $kind }: { $text }
words-unexplained = Wörter, die man kennen muss, ohne einfache Worte
words-unexplained-remedy = Dafür hat noch niemand einfache Worte. Sagt es in der Frage selbst, oder zeigt die Sache.
words-draw-smooth = glatter Rand
words-draw-unlobed = ungelappt
words-draw-toothed = gezähnt
words-draw-double = doppelt gezähnt
words-draw-spiny = stachelig
words-draw-heart = herzförmig
words-draw-feather = Blättchen wie eine Feder
words-draw-hand = Blättchen wie eine Hand
words-draw-opposite = gegenständig
words-draw-alternate = wechselständig
words-draw-whorl = Quirl
words-draw-blade = Spreite
words-draw-stalk = Blattstiel
words-draw-edge = Rand
words-draw-midrib = Mittelrippe
words-draw-veins = Seitenadern
words-draw-tip = Spitze
words-draw-base = Grund
words-draw-egg = eiförmig
words-draw-oval = oval
words-draw-toothed-large = gezähnt
words-draw-wavy = gewellt
words-draw-hand-lobed = gelappt wie eine Hand
words-draw-lobe = ein Lappen
words-draw-tooth = ein Zahn
words-draw-gap = eine Bucht
words-draw-needles = Nadeln
words-draw-pointed-tip = spitzes Ende
words-draw-round-tip = rundes Ende
words-draw-lopsided = schief
words-draw-even = beide Hälften gleich
words-draw-one-leaf = ein Blatt: alles zusammen
words-draw-one-leaflet = ein Blättchen: keine Knospe
words-draw-bud = Knospe über dem Stiel
words-draw-gall = Galle
words-draw-paired-leaflets = Blättchen in Paaren
words-draw-vein-pair = ein Paar Seitenadern
words-draw-twig = Zweig
words-draw-lobed = gelappt wie eine Feder
