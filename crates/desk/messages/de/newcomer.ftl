### Messages: newcomer.
