#include "editor/price_book.h"
#include "base/memory.h"
#include "prices/prices.h"

#include <stdlib.h>
#include <string.h>

void price_book_close(struct editor *editor)
{
	free(editor->book_name);
	editor->book_name = NULL;
	if (editor->has_book)
		book_fini(&editor->book);
	editor->has_book = false;
}

void price_book_recheck(struct editor *editor)
{
	char *path = prices_path(editor->plot, editor->store.path);
	struct file_stamp stamp;

	if (!path)
		return;
	stamp = file_stamp(path);
	free(path);
	if (editor->has_book && file_stamp_equal(&stamp, &editor->book_stamp))
		return;
	price_book_close(editor);
	editor->is_stale = editor->has_news = true;
}

void price_book_refresh(struct editor *editor)
{
	const struct value *named = block_value(&editor->plot->details.head, HEAD_PRICES);
	const char *before = editor->book_name;
	struct text message = TEXT_EMPTY;
	char *path;

	if (named->set ? before && strcmp(named->as.text, before) == 0 : !before)
		return;
	price_book_close(editor);
	if (!named->set)
		return;
	editor->book_name = memory_string(named->as.text);
	path = prices_path(editor->plot, editor->store.path);
	editor->book_stamp = file_stamp(path);
	editor->has_book = prices_read(path, &editor->book, &message);
	if (!editor->has_book)
		editor_say(editor, "No prices: %s", message.bytes);
	free(path);
	text_fini(&message);
}
