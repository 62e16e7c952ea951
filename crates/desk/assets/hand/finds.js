// Adds what a hand wants to the finds screen.
