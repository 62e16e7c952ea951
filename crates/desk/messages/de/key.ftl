### Messages: key.
