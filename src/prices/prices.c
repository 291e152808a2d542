#include "prices/prices.h"
#include "base/file.h"
#include "base/path.h"

void prices_fault(struct text *out, const char *path, const struct book_fault *fault)
{
	const struct diag *d = &fault->diag;

	text_print(out, "%s:", path);
	if (d->line)
		text_print(out, "%d:%d:", d->line, d->column);
	else if (fault->path[0])
		text_print(out, " %s:", fault->path);
	text_print(out, " found %s, expected %s", d->found, d->expected);
}

bool prices_read(const char *path, struct book *book, struct text *message)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct book_fault fault;
	bool is_read = false;

	*book = (struct book){ .allow = { .kind = BLOCK_ALLOW } };
	if (!file_read(path, BOOK_BYTES_MOST, &bytes, &error)) {
		text_add(message, error.sentence);
	} else {
		is_read = book_read(bytes.bytes, bytes.length, book, &fault);
		if (!is_read)
			prices_fault(message, path, &fault);
	}
	text_fini(&bytes);
	return is_read;
}

char *prices_path(const struct plot *plot, const char *plot_path)
{
	const struct value *named = block_value(&plot->details.head, HEAD_PRICES);

	return named->set ? path_in_folder(plot_path, named->as.text) : NULL;
}
