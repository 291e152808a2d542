#include "support/book.h"
#include "base/file.h"

#include <check.h>

bool book_try(struct book *book, const char *text, struct book_fault *fault)
{
	struct text quoted = TEXT_EMPTY;
	bool is_read;

	text_add(&quoted, text);
	for (size_t i = 0; i < quoted.length; i++)
		if (quoted.bytes[i] == '\'')
			quoted.bytes[i] = '"';
	is_read = book_read(quoted.bytes, quoted.length, book, fault);
	text_fini(&quoted);
	return is_read;
}

void book_of(struct book *book, const char *rest)
{
	struct text text = TEXT_EMPTY;
	struct book_fault fault;

	text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD'%s%s}",
		rest[0] ? ", " : "", rest);
	ck_assert_msg(book_try(book, text.bytes, &fault), "%s: found %s, expected %s", fault.path,
		fault.diag.found, fault.diag.expected);
	text_fini(&text);
}

void book_file(struct book *book, const char *path)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct book_fault fault;

	ck_assert_msg(file_read(path, BOOK_BYTES_MOST, &bytes, &error), "%s", error.sentence);
	ck_assert_msg(book_read(bytes.bytes, bytes.length, book, &fault), "%s:%d:%d: %s", path,
		fault.diag.line, fault.diag.column, fault.path);
	text_fini(&bytes);
}
