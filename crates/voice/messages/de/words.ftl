### Wörter.

words-no-key = Hier stehen die Wörter, die in den Fragen eines Schlüssels vorkommen. Beginnt zuerst einen Schlüssel.
words-none = In diesem Schlüssel kommt kein Wort vor, das man erklären müsste.
words-count = { $count ->
    [one] Ein Wort in diesem Schlüssel, das Kinder vielleicht nicht kennen.
   *[other] { $count } Wörter in diesem Schlüssel, die Kinder vielleicht nicht kennen.
}
words-look-alike = Nicht zu verwechseln mit
words-question = Frage { $number }: { $text }
words-confirming = { $kind }: { $text }
words-unexplained = Wörter, für die eine einfache Erklärung fehlt
words-unexplained-remedy = Diese Wörter hat noch niemand erklärt. Erklärt sie in der Frage selbst, oder zeigt die Sache.
words-draw-smooth = glatter Rand
words-draw-unlobed = nicht gelappt
words-draw-toothed = gezähnt
words-draw-double = doppelt gezähnt
words-draw-spiny = stachelig
words-draw-heart = herzförmig
words-draw-feather = gefiedert: Blättchen wie an einer Feder
words-draw-hand = gefingert: Blättchen wie die Finger einer Hand
words-draw-opposite = gegenständig
words-draw-alternate = wechselständig
words-draw-whorl = quirlständig
words-draw-blade = Blattspreite
words-draw-stalk = Blattstiel
words-draw-edge = Blattrand
words-draw-midrib = Mittelrippe
words-draw-veins = Seitennerven
words-draw-tip = Blattspitze
words-draw-base = Blattgrund
words-draw-egg = eiförmig
words-draw-oval = oval
words-draw-toothed-large = gezähnt
words-draw-wavy = gewellt
words-draw-hand-lobed = handförmig gelappt
words-draw-lobe = ein Lappen
words-draw-tooth = ein Zahn
words-draw-gap = eine Lücke
words-draw-needles = Nadeln
words-draw-pointed-tip = spitze Blattspitze
words-draw-round-tip = runde Blattspitze
words-draw-lopsided = schief
words-draw-even = beide Hälften gleich
words-draw-one-leaf = ein Blatt: das Ganze
words-draw-one-leaflet = ein Blättchen: ohne Knospe
words-draw-bud = Knospe über dem Blattstiel
words-draw-gall = Galle
words-draw-paired-leaflets = Blättchen in Paaren
words-draw-vein-pair = ein Paar Seitennerven
words-draw-twig = Zweig
words-draw-lobed = fiederförmig gelappt
