#include "screen/sender.h"
#include "base/fd_sink.h"
#include "base/memory.h"
#include "screen/shorten.h"
#include "screen/signals.h"

#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <unistd.h>

/* A frame takes no more, but on a screen larger than there are; its room is there before, so that
 * none is lost for want of it. */
enum { FRAME_BYTES = 1 << 20 };

static struct {
	int line, drawn; /* the terminal; the file in memory; below 0: there is none */
	bool is_begun;
	struct shortener shortener;
} sender = { .line = -1, .drawn = -1 };

void sender_open(void)
{
	sender.line = fcntl(STDOUT_FILENO, F_DUPFD_CLOEXEC, STDERR_FILENO + 1);
	sender.drawn = memfd_create("drawn", MFD_CLOEXEC);
	if (sender.drawn >= 0 && posix_fallocate(sender.drawn, 0, FRAME_BYTES) != 0) {
		close(sender.drawn); /* files may not be that long here, or there is no memory */
		sender.drawn = -1;
	}
}

void sender_close(void)
{
	if (sender.line >= 0)
		close(sender.line);
	if (sender.drawn >= 0)
		close(sender.drawn);
	sender.line = sender.drawn = -1;
}

void sender_forget(void)
{
	sender.shortener = shortener_of(sender.shortener.size);
}

/* A terminal that has another size may have its cursor elsewhere. */
static void fit(struct stand size)
{
	const struct stand *had = &sender.shortener.size;

	if (size.row != had->row || size.column != had->column)
		sender.shortener = shortener_of(size);
}

/* Where the session ends standard output is nowhere, and stays there. */
void sender_begin(int rows, int columns, bool has_moves)
{
	fit(has_moves ? (struct stand){ rows, columns } : (struct stand){ 0, 0 });
	if (sender.line < 0 || sender.drawn < 0)
		return;
	signals_hold(true);
	sender.is_begun = !signals_ending() && lseek(sender.drawn, 0, SEEK_SET) == 0 &&
		dup2(sender.drawn, STDOUT_FILENO) == STDOUT_FILENO;
	if (!sender.is_begun)
		signals_hold(false);
}

void sender_end(void)
{
	off_t length;
	struct text shorter = TEXT_EMPTY;
	char *bytes;

	if (!sender.is_begun)
		return;
	sender.is_begun = false;
	fflush(stdout);
	dup2(sender.line, STDOUT_FILENO);
	signals_hold(false);
	length = lseek(sender.drawn, 0, SEEK_CUR);
	if (length <= 0)
		return;
	bytes = memory_new((size_t)length, 1);
	length = pread(sender.drawn, bytes, (size_t)length, 0);
	shorten(&sender.shortener, bytes, length > 0 ? (size_t)length : 0, &shorter);
	/* A terminal that takes no bytes is found to be gone where keys are read. */
	(void)fd_put(STDOUT_FILENO, shorter.bytes, shorter.length);
	text_fini(&shorter);
	free(bytes);
}
