### Drucken.

print-title = Drucken
print-second-type = Was fehlt, gleich hier aufschreiben
second-whole = Jeder Name, jede Frage, der Titel und die Warnungen stehen auch in der zweiten Sprache da ({ $language }).
second-names-missing = { $count ->
    [one] 1 Art hat noch keinen Namen in der zweiten Sprache ({ $language }). Gedruckt wird nur der erste.
   *[other] { $count } Arten haben noch keinen Namen in der zweiten Sprache ({ $language }). Gedruckt wird nur der erste.
}
second-questions-missing = { $count ->
    [one] 1 Frage steht noch nicht in der zweiten Sprache da ({ $language }). Gedruckt wird sie nur in der ersten.
   *[other] { $count } Fragen stehen noch nicht in der zweiten Sprache da ({ $language }). Gedruckt werden sie nur in der ersten.
}
second-texts-missing = { $count ->
    [one] 1 anderer Text (Titel, Warnung, ja oder nein) steht noch nicht in der zweiten Sprache da ({ $language }). Gedruckt wird er nur in der ersten.
   *[other] { $count } andere Texte (Titel, Warnungen, ja und nein) stehen noch nicht in der zweiten Sprache da ({ $language }). Gedruckt werden sie nur in der ersten.
}
second-not-printed = { $count ->
    [one] 1 Text in der zweiten Sprache ({ $language }) fehlt auf Papier: Der Schrift fehlt { $letters }. Auf der Seite fürs Handy steht er.
   *[other] { $count } Texte in der zweiten Sprache ({ $language }) fehlen auf Papier: Der Schrift fehlt { $letters }. Auf der Seite fürs Handy stehen sie.
}
print-no-key = Es gibt noch nichts zu drucken. Zuerst braucht es einen Schlüssel.
print-nothing-asked = Es gibt noch nichts zu drucken: Dieser Schlüssel hat keine Frage. Zuerst die Funde auf Haufen sortieren oder dort den Rest finden lassen.
print-set-sheets = Die Arbeitsblätter für die Gruppe sind zum Sortieren: eine Nummer für jeden Fund, ein leerer Schlüssel zum Ausfüllen, eine Liste zum Ankreuzen.
print-draft = In diesem Schlüssel geht unterwegs ein Fund verloren. Darum steht auf jeder Seite ENTWURF. Auf der Seite „Schlüssel“ steht, was zu beheben ist.
print-today = Alles für heute
print-today-about = Schlüssel, Schaubild, Wörter, Nummern und eine Liste zum Ausprobieren in einer Datei. Eine Seite für Erwachsene sagt, wie viel wovon zu kopieren ist.
print-short-key = Der Schlüssel auf wenigen Seiten
print-short-key-about = zwei Spalten, ohne Felder zum Einkleben: einmal je Gruppe. Er ist in „Alles für heute“
print-pocket = Schlüssel für die Hosentasche
print-pocket-about = ein Blatt Papier, zu acht kleinen Seiten gefaltet, in kleiner Schrift: eins je Kind
print-key-pages = Der Schlüssel
print-key-pages-about = nummerierte Fragen, Warnungen und die Wörter: einmal je Gruppe
print-chart = Das Schaubild
print-chart-about = der ganze Schlüssel als Baum, für die Wand: möglichst auf A3
print-words = Wörter zum Ansehen
print-words-about = jedes Wort des Schlüssels als Zeichnung, daneben das, womit man es verwechselt: für die Wand oder den Gruppentisch
print-word-cards = Wörter als Karten
print-word-cards-about = acht Karten auf einer Seite, zum Ausschneiden: jedes Wort mit Zeichnung und Erklärung
print-try-out = Zum Ausprobieren
print-try-out-about = Nummernschilder, eine Liste zum Ankreuzen, ein leerer Schlüssel und die Lösungen für Erwachsene
print-cards = Karten zum Sortieren
print-cards-about = jede Art als Bild mit dem Namen darunter, acht auf einer Seite: zum Ausschneiden und auf zwei Haufen Legen
print-cards-backs = Karten mit dem Namen auf der Rückseite
print-cards-backs-about = dieselben Karten, der Name steht hinter dem Bild: beidseitig drucken, an der langen Kante wenden
print-cards-numbers = Karten: Was ist das?
print-cards-numbers-about = Bilder mit einer Nummer statt dem Namen, dazu die Lösungen für Erwachsene
print-ruler = Messstreifen für heute
print-ruler-about = ein Streifen zum Ausschneiden mit genau den Längen, nach denen dieser Schlüssel fragt, und eine Linie, die den Drucker prüft
print-measuring = Messblatt
print-measuring-about = Zeilen für sechs Funde einer Art, mit der kleinsten und der größten Länge zum Eintragen
print-scale-card = Maßkarte
print-scale-card-about = legt Blätter darauf und fotografiert sie: Spinney weiß dann, wie groß sie sind
print-scale-strip = Maßstreifen
print-scale-strip-about = liegt in der Teichschale oder daneben: Spinney weiß dann, wie groß etwas auf dem Foto ist
print-rubbing = Rubbelbilder
print-rubbing-about = wie ihr eins macht, und ein Rahmen mit Millimetern dafür
print-album = Album
print-album-about = ein Platz für jede Art, so groß wie ihr größtes Blatt: zum Einkleben von Blättern und Rubbelbildern
print-wall = Schaubild für die Wand
print-wall-about = der Schlüssel als Baum mit Plätzen, so groß wie echte Blätter: mehrere Bögen zum Zusammenkleben
print-floor = Schilder für den Boden
print-floor-about = jede Frage mit zwei großen Pfeilen: So liegt der Schlüssel auf dem Boden, und ihr geht ihn ab
print-trail = Posten für einen Pfad
print-trail-about = auf jedem Bogen eine Frage, zum Aufhängen an einem Weg, dazu ein Plan für Erwachsene
print-indented = Eingerückter Schlüssel
print-indented-about = der ganze Schlüssel von oben nach unten, jede Antwort weiter eingerückt: für alle, die das aus Büchern kennen
print-looks = Streifen zum Anlegen
print-looks-about = ein Streifen für alles, was man sehen kann, zum Anlegen an die Namen: Es gibt keine erste Frage
print-holes = Lochkarten
print-holes-about = eine Karte für alles, was man sehen kann: lochen, aufeinanderlegen und gegen das Licht halten
print-visit = Der Ausflug
print-visit-about = was wehtun kann, was auszufüllen ist, üblicher Rat mit Quellen, was mitzunehmen ist, ein Plan; und eine Karte für alle Erwachsenen, die helfen
print-lessons = Für den Unterricht
print-lessons-about = Aufwärmen mit Nudeln, ein halb fertiger Schlüssel, ein Schlüssel mit drei Fehlern und die Lösungen, eine Art dazu, Zettel für Neulinge, was ein Kind jetzt kann, eine Seite für zu Hause
print-of-key = Der Schlüssel
print-of-words = Seine Wörter
print-of-sorting = Zum Sortieren und Ausprobieren
print-of-measuring = Zum Messen und Sammeln
print-of-large = Groß: Wand, Boden und Weg
print-of-forms = Der Schlüssel in anderer Form
print-of-around = Vor, neben und nach dem Ausflug
print-paper = Papier
print-ink = Druckfarbe
print-ink-colour = bunt
print-ink-black = nur schwarz, spart Farbe
print-letters = Schrift
print-letters-usual = wie sonst
print-letters-large = Großdruck
print-places = Platz für ein Blatt
print-places-measured = wie gemessen
print-places-about = Wie lang ein Blatt auf jedem Platz im Album und auf dem Schaubild für die Wand sein darf: 12 cm, oder 120 in mm. Steht hier nichts, ist jeder Platz so groß wie das größte Blatt in der Tabelle.
print-places-not = Das ist keine Länge für einen Platz.
print-places-not-remedy = Tippt eine Länge von { $least } bis { $most } mm, etwa 12 cm.
print-wall-size = Schaubild für die Wand
print-wall-needed = so groß, wie es sein muss
print-wall-a2 = genau A2 (42 × 59,4 cm)
print-wall-a1 = genau A1 (59,4 × 84,1 cm)
print-wall-no-room = Auf ein Schaubild dieser Größe passt dieser Schlüssel nicht.
print-wall-no-room-remedy = Wählt A1, oder lasst das Schaubild so groß werden, wie es sein muss.
print-wall-no-room-a1 = Auf ein Schaubild dieser Größe passt dieser Schlüssel nicht.
print-wall-no-room-a1-remedy = Lasst das Schaubild so groß werden, wie es sein muss.
print-not-large-lengths = Dieses Blatt bleibt, wie es ist: Längen sind darauf in wahrer Größe, größere Schrift würde sie ändern.
print-not-large-pocket = Dieses Blatt bleibt, wie es ist: Auf acht Seiten aus einem Blatt Papier hat Großdruck keinen Platz. „Der Schlüssel auf wenigen Seiten“ hat ihn.
print-not-large-already = Dieses Blatt bleibt, wie es ist: Seine Fragen sind schon groß.
print-not-large-adults = Dieses Blatt bleibt, wie es ist: Es ist für die Erwachsenen.
print-not-large-form = Dieses Blatt bleibt, wie es ist: Von ihm gibt es noch keinen Großdruck.
print-children = Wie viele Kinder?
print-groups = Wie viele Gruppen?
print-count = Kopien zählen
print-count-about = Die erste Seite von „Alles für heute“ sagt dann, wie oft jedes Arbeitsblatt zu kopieren ist.
print-not-a-number = Die Anzahl der Kinder oder Gruppen war nicht zu lesen.
print-not-a-number-remedy = Tippt eine ganze Zahl von 1 bis { $most }, oder lasst das Feld leer.
print-show = Zeigen
print-files = Andere Dateien
print-phone = Die Seite fürs Handy (HTML, geht ohne Internet)
print-text = Der Schlüssel als Text
print-json = Der Schlüssel als JSON, für andere Programme
print-csv = Die Tabelle als CSV, für eine Tabellenkalkulation
print-download = PDF herunterladen
print-pages = Seiten
print-page = Seite { $page } von { $of }
print-before = Vorige Seite
print-after = Nächste Seite
print-tablets = Auf die Tablets der Kinder
print-tablets-get = Die Seite für Tablets speichern
print-tablets-cable = Mit Kabel: Verbindet das Tablet mit diesem Gerät und kopiert die Datei in seinen Ordner für Downloads.
print-tablets-stick = Mit Speicherstick: Kopiert die Datei darauf, und von dort auf jedes Tablet.
print-tablets-web = Über die Schulseiten: Stellt die Datei auf die eigenen Seiten der Schule und schreibt die Adresse an die Tafel.
print-tablets-open = Auf dem Tablet genügt ein Tippen auf die Datei. Sie braucht kein Netz und fragt niemanden nach einem Namen.
