### What could not be kept, read or found.

host-not-kept = { $why } Nothing was changed.
host-again = Try it once more.
host-large = This is more than { $count } MiB. Nothing was changed.
host-large-remedy = Give fewer pictures at a time, or smaller ones.
host-many = This form has more fields or files than are taken at a time. Nothing was changed.
host-many-remedy = Give it in several parts.
host-slow = This took too long to arrive. Nothing was changed.
host-no-form = This could not be read as a form. Nothing was changed.
host-no-form-remedy = Go back, load the page again and do it once more.
host-long = This address is too long.
host-long-remedy = Go back and follow the link again.
host-overtaken = Another window kept changing the collection at the same moment. Nothing was changed.
host-picture = This picture is not in the collection any more.
host-picture-remedy = It may have been removed for good. Load the page again.
host-bug = Here is a mistake in Spinney itself. Nothing was changed.
host-bug-remedy = Go back and try another way; and please tell those who make Spinney what you did.
