### Messages: words.
