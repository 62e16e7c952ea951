// Adds what a hand wants to the table screen.
