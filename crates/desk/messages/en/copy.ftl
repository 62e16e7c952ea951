### Messages: copy.
