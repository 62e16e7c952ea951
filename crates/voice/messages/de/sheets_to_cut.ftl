### Die Blätter, die ausgeschnitten, ausgelegt, aufgehängt oder zum Messen gebraucht werden.

sheet-drawing-of = Zeichnung von { $kind }, nach der Tabelle
sheet-drawing-unnamed = Eine Zeichnung nach der Tabelle: Was ist es?
sheet-drawing-of-leaf = Zeichnung von einem Blatt: { $kind }
sheet-drawing-of-leaf-unnamed = Eine Zeichnung von einem Blatt: Was ist es?
sheet-picture-unnamed = Ein Bild: Was ist es?

## Karten zum Sortieren.

sheet-cards = Karten zum Sortieren
sheet-cards-numbered = Karten: Was ist das?
sheet-title-cards = { $title }: Karten
sheet-title-cards-backs = { $title }: Karten, Namen auf der Rückseite
sheet-title-cards-numbered = { $title }: Karten ohne Namen
sheet-cards-both-sides = Beidseitig drucken, an der langen Kante wenden.
sheet-card-is = Das ist
sheet-caution-in-key = Hier ist Vorsicht nötig: Lest im Schlüssel nach.
sheet-caution-for-all-in-key = Lest, bevor ihr losgeht, was alle wissen müssen: Es steht im Schlüssel.
sheet-cards-answers = Karten: die Lösungen, für Erwachsene
sheet-cards-answers-about = Die Nummer auf jeder Karte, und was es ist. Dieses Blatt bleibt bei euch, bis alle geraten haben.
sheet-column-sure = Woran man es sicher erkennt

## Ein Messstreifen für heute und das Messblatt.

sheet-ruler = Messstreifen für heute
sheet-title-ruler = { $title }: Messstreifen
sheet-ruler-check = Haltet zuerst ein echtes Lineal an diese Linie. Drucker verkleinern: Ist sie nicht 10 cm lang, noch einmal mit 100 % (tatsächliche Größe) drucken.
sheet-strip-check = Haltet zuerst ein echtes Lineal an die 10-cm-Linie auf einem Streifen. Drucker verkleinern: Ist sie nicht 10 cm lang, noch einmal mit 100 % (tatsächliche Größe) drucken.
sheet-ruler-check-line = Diese Linie ist 10 cm lang.
sheet-ruler-how = Schneidet den Streifen aus. Legt flach darauf, was ihr messt, den Anfang auf 0. Reicht es bis zu der Linie mit der Nummer eurer Frage?
sheet-ruler-tape = Frage { $numbers } fragt nach { $amount }: Nehmt ein Maßband.
sheet-ruler-leaf-drawn = Ein Blatt mit seinen Längen: der Stiel vom Zweig bis zur Spreite, die Spreite von dort bis zur Spitze
sheet-ruler-stalk = Blattstiel
sheet-ruler-blade = Spreite
sheet-ruler-measured = Was wir gemessen haben
sheet-glue = hier kleben
sheet-measuring = Messblatt
sheet-title-measuring = { $title }: Messblatt
sheet-measuring-about = Messt sechs Funde derselben Art, kleine und große. Schreibt die kleinste und die größte Länge auf: Von da bis da wird eingetragen.
sheet-measuring-kind = Art oder Nummer:
sheet-measuring-least = kleinste
sheet-measuring-most = größte
sheet-measuring-type = eintragen

## Die Maßkarte, auf der Blätter fotografiert werden.

sheet-scale = Maßkarte
sheet-title-scale = { $title }: Maßkarte
sheet-scale-alone = Blätter, fotografiert und gemessen
sheet-scale-lay = Legt Blätter flach und mit Abstand zwischen die Ringe. Lasst aus, wovor gewarnt wird.
sheet-scale-photograph = Fotografiert den ganzen Bogen von oben: alle acht Ringe im Bild, kein Schatten einer Hand.
sheet-scale-measure = Spinney findet die Ringe, legt das Bild flach und misst jedes Blatt in Millimetern.
sheet-scale-rings = Acht Ringe um den Platz für die Blätter
sheet-strip = Maßstreifen
sheet-title-strip = { $title }: Maßstreifen
sheet-strip-cut = Schneidet die Streifen aus, einen für jede Schale. Laminiert sie vorher, falls sie nass werden.
sheet-strip-lay = Legt einen Streifen flach in die Schale oder daneben, so hoch wie das, was ihr messt.
sheet-strip-photograph = Fotografiert gerade von oben, mit allen sechs Ringen im Bild. Was ihr messt, liegt nahe dabei.
sheet-strip-rings = Sechs Ringe in einer Reihe
sheet-strip-ten = 10 cm

## Rubbelbilder.

sheet-rubbing = Rubbelbilder
sheet-title-rubbing = { $title }: Rubbelbilder
sheet-rubbing-choose = Sucht ein festes, trockenes Blatt aus. Lasst aus, wovor gewarnt wird.
sheet-rubbing-lay = Legt es auf etwas Hartes, die Adern nach oben, und diesen Bogen darauf.
sheet-rubbing-rub = Haltet das Papier fest. Rubbelt sanft mit der langen Seite der Kreide, von der Mitte nach außen.
sheet-rubbing-write = Schreibt dazu, was es ist, wo es wuchs, und den Tag.
sheet-rubbing-keep = Bewahrt Rubbelbilder flach auf, mit leerem Papier dazwischen.
sheet-rubbing-picture = Eingescannt oder gerade von oben fotografiert, kann ein Rubbelbild das Bild zum Fund sein: Öffnet den Fund und nehmt es dort dazu.
sheet-rubbing-rubbed = das Rubbelbild
sheet-rubbing-above = von oben
sheet-rubbing-mirror = Ihr rubbelt die Unterseite: Von oben sind links und rechts vertauscht.
sheet-rubbing-frame = Ein Rahmen mit Millimetern am Rand, damit das Rubbelbild seine wahre Größe behält
sheet-rubbing-where = Wo:
sheet-rubbing-day = Tag:

## Das Schaubild für die Wand.

sheet-wall = Schaubild für die Wand
sheet-title-wall = { $title }: Schaubild für die Wand
sheet-wall-size = Aus { $sheets } Bögen wird ein Schaubild, { $wide } cm breit und { $high } cm hoch.
sheet-wall-exact = Aus { $sheets } Bögen wird ein Schaubild genau in { $paper }: { $wide } cm breit und { $high } cm hoch.
sheet-wall-cut-out = Wenn alles geklebt ist, schneidet an der Linie rundherum entlang.
sheet-wall-cut = Schneidet ab, was links von einer gestrichelten Linie liegt und was darüber liegt.
sheet-wall-glue = Legt den Bogen so auf seinen Nachbarn, dass die Schnittkante auf der gepunkteten Linie liegt und die kurzen Striche zusammentreffen. Klebt ihn dort fest.
sheet-wall-order = Klebt zuerst die Bögen einer Reihe zusammen, der Nummer nach. Dann Reihe an Reihe.
sheet-wall-small = Die Schrift ist klein ({ $points } pt), weil größere nicht hineinpasst. Man liest sie aus einem Schritt Entfernung, nicht quer durch den Raum.
sheet-leaf-too-large = Nicht jedes Blatt passt ganz auf seinen Platz: { $kinds }. Klebt dort ein kleineres ein.
sheet-wall-together = So gehören die Bögen zusammen: { $across } nebeneinander, { $down } untereinander
sheet-wall-places = So groß sind die Plätze
sheet-wall-place = { $kind }: { $high } cm hoch, { $wide } cm breit
sheet-wall-sheet = Bogen { $number }: Reihe { $row }, Spalte { $column }

## Schilder für den Boden, Posten für einen Pfad.

sheet-floor = Schilder für den Boden
sheet-title-floor = { $title }: Schilder für den Boden
sheet-title-trail = { $title }: Pfad
sheet-trail-plan = Pfad: der Plan, für Erwachsene
sheet-trail-about = Hängt die Posten an eurem Weg auf, den ersten dort, wo ihr beginnt. Schreibt auf, wo jeder hängt. Die Kinder tragen einen Fund von Posten zu Posten.
sheet-trail-which = Posten
sheet-trail-asks = Frage
sheet-trail-hangs = Wo er hängt
sheet-trail-post = Posten { $number }, { $shape }
sheet-trail-go = weiter zu { $post }
sheet-shape-circle = der Kreis
sheet-shape-triangle = das Dreieck
sheet-shape-square = das Quadrat
sheet-shape-diamond = die Raute
sheet-shape-house = das Haus
sheet-shape-drop = der Tropfen

## Der Schlüssel in anderer Form.

sheet-indented = Eingerückter Schlüssel
sheet-title-indented = { $title }: eingerückter Schlüssel
sheet-indented-about = Beginnt bei der ersten Frage. Was aus einer Antwort folgt, steht weiter rechts darunter. Eine durchgezogene Linie heißt: noch immer ja. Eine gestrichelte: noch immer nein.
sheet-looks = Streifen zum Anlegen
sheet-title-looks = { $title }: Streifen zum Anlegen
sheet-looks-about = Schneidet die Streifen aus. Beginnt mit dem, was ihr seht: Legt seinen Streifen rechts an die Namen, dann den nächsten. Ein Punkt heißt: Das kommt bei dieser Art vor. Welche Art hat auf jedem Streifen einen Punkt? Ein Fragezeichen: Niemand hat nachgesehen.
sheet-looks-lay = Legt hier die Streifen an, die zu eurem Fund passen.
sheet-look-is = { $name }: { $state }
sheet-look-less = { $name }: weniger als { $amount }
sheet-look-more = { $name }: { $amount } oder mehr
sheet-look-who = Das gibt es bei: { $kinds }
sheet-holes = Lochkarten
sheet-title-holes = { $title }: Lochkarten
sheet-holes-punch = Schneidet die Karten aus. Locht sie, wo ein Ring ist.
sheet-holes-doubt = Ein gestrichelter Ring heißt: Niemand hat nachgesehen. Locht auch dort, denn es kann sein.
sheet-holes-lay = Seht euren Fund an. Nehmt die Karten, die passen, und legt sie genau aufeinander.
sheet-holes-light = Haltet sie gegen das Licht. Wo es durchscheint, steht die Nummer.
sheet-holes-numbers = Welche Nummer ist welche Art?

## Das Album.

sheet-album = Album
sheet-title-album = { $title }: Album
sheet-album-about = Jeder Platz ist so groß wie das größte Blatt, das gemessen wurde. Klebt ein Blatt oder ein Rubbelbild ein. Wo kein Name steht, schreibt ihr einen.
sheet-album-about-wished = Auf jeden Platz passt ein Blatt, das { $cm } cm lang ist. Klebt ein Blatt oder ein Rubbelbild ein. Wo kein Name steht, schreibt ihr einen.

## Der Schlüssel für die Hosentasche: ein Blatt Papier, zu acht kleinen Seiten gefaltet.

sheet-pocket = Schlüssel für die Hosentasche
sheet-title-pocket = { $title }: Schlüssel für die Hosentasche
sheet-pocket-yes = durchgezogene Linie
sheet-pocket-no = gestrichelte Linie
sheet-pocket-question = Frage { $number }
sheet-pocket-questions = Fragen { $first }–{ $last }
sheet-pocket-fold = So wird gefaltet
sheet-pocket-fold-cut = Faltet alle gepunkteten Linien. Kurze Kanten aufeinander: Schneidet die gestrichelte Linie.
sheet-pocket-fold-long = Klappt auf. Lange Kanten aufeinander, Schrift außen.
sheet-pocket-fold-push = Schiebt die Enden zusammen, bis der Schnitt aufgeht.
sheet-pocket-fold-round = Legt die Seiten herum, den Titel nach vorn.
sheet-pocket-too-long = Dieser Schlüssel ist zu lang für die Hosentasche: Auf acht kleinen Seiten haben nicht alle Fragen in lesbarer Schrift Platz.
sheet-pocket-too-long-remedy = Druckt stattdessen „Der Schlüssel auf wenigen Seiten“, oder macht einen Schlüssel für weniger Arten.
