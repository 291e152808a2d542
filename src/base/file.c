#include "base/file.h"
#include "base/fd_sink.h"
#include "base/folder.h"
#include "base/path.h"
#include "base/temporary.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { PATH_SHOWN = 150, PART_BYTES = 64 * 1024 };

/* How much of a long path is shown: not half a character. */
static int path_shown(const char *path)
{
	size_t shown = strnlen(path, PATH_SHOWN);

	while (path[shown] && ((unsigned char)path[shown] & 0xC0) == 0x80)
		shown--;
	return (int)shown;
}

bool file_fail(struct file_error *error, const char *act, const char *path, const char *why)
{
	int shown = path_shown(path);

	snprintf(error->sentence, sizeof error->sentence, "cannot %s %.*s%s: %s", act, shown,
		path, path[shown] ? "..." : path[0] ? "" : "\"\"", why);
	return false;
}

static void sentence_add(struct file_error *error, const char *words, const char *path)
{
	size_t length = strlen(error->sentence);

	snprintf(error->sentence + length, sizeof error->sentence - length, "%s%.*s", words,
		path_shown(path), path);
}

static bool fail_errno(struct file_error *error, const char *act, const char *path)
{
	return file_fail(error, act, path, strerror(errno));
}

static bool fail_kind(struct file_error *error, const char *act, const char *path, mode_t mode)
{
	return file_fail(error, act, path,
		S_ISDIR(mode) ? "it is a directory" : "it is not a regular file");
}

/* Reads to the end of fd, or to just over `most` bytes, into an empty text. */
static bool read_all(int fd, size_t most, struct text *out)
{
	char buffer[PART_BYTES];

	for (;;) {
		ssize_t got = read(fd, buffer, sizeof buffer);

		if (got < 0 && errno == EINTR)
			continue;
		if (got < 0)
			return false;
		if (got == 0)
			return true;
		text_add_bytes(out, buffer, (size_t)got);
		if (out->length > most) {
			errno = EFBIG;
			return false;
		}
	}
}

bool file_read(const char *path, size_t most, struct text *out, struct file_error *error)
{
	bool is_input = strcmp(path, "-") == 0, done;
	struct stat status;
	int fd, cause;

	if (is_input) {
		fd = STDIN_FILENO;
	} else {
		fd = open(path, O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);
		if (fd < 0)
			return fail_errno(error, "open", path);
		if (fstat(fd, &status) == 0 && !S_ISREG(status.st_mode)) {
			close(fd);
			return fail_kind(error, "read", path, status.st_mode);
		}
	}
	text_clear(out);
	done = read_all(fd, most, out);
	cause = errno;
	if (!is_input)
		close(fd);
	errno = cause;
	return done || fail_errno(error, "read", path);
}

/* Gives a new file the mode and, where that is allowed, the owner and group of another. */
static bool mode_copy(int fd, const struct stat *like)
{
	mode_t mode = like->st_mode & 07777;

	if (fchown(fd, like->st_uid, like->st_gid) < 0 && fchown(fd, (uid_t)-1, like->st_gid) < 0)
		mode &= 0707; /* the group is another: give it nothing */
	return fchmod(fd, mode) == 0;
}

static mode_t mode_new(void)
{
	mode_t mask = umask(0);

	umask(mask);
	return 0666 & ~mask;
}

/* Closes fd after what was `done` to it; a full disk may show only now. errno stays that of the
 * first failure. */
static bool finish(int fd, bool done)
{
	int cause = errno;

	if (fd >= 0 && close(fd) < 0 && done)
		return false;
	errno = cause;
	return done;
}

/* One file to write, by whatever way. */
struct writing {
	const char *path;
	const struct file_content *content;
	struct file_error *error;
};

static bool write_failed(const struct writing *w, const char *act)
{
	return fail_errno(w->error, act, w->path);
}

static bool content_write(const struct writing *w, int fd)
{
	struct fd_sink to = fd_sink(fd);

	w->content->print(&to.sink, w->content->context);
	return fd_sink_end(&to) && fsync(fd) == 0;
}

/* Writes a new file and renames it over what has the name, or only where nothing has; errno says
 * what failed. It gets mode and owner of `like`; NULL: those of any new file. */
static bool put_new(const struct writing *w, const struct stat *like, bool is_over)
{
	struct temporary new;

	if (!temporary_begin(&new, w->path))
		return false;
	if (!(like ? mode_copy(new.fd, like) : fchmod(new.fd, mode_new()) == 0) ||
	    !content_write(w, new.fd)) {
		temporary_drop(&new);
		return false;
	}
	if (!temporary_place(&new, w->path, is_over))
		return false;
	folder_sync(w->path);
	return finish(new.fd, true);
}

/* Takes the room that the new text needs, so that a full disk is found before the old text is
 * touched. Where the file system cannot do that, writing has to show it. */
static bool room_take(const struct writing *w, int fd, off_t length, const struct stat *old)
{
	if (length <= old->st_size || fallocate(fd, 0, 0, length) == 0 ||
		(errno != ENOSPC && errno != EDQUOT && errno != EFBIG))
		return true;
	write_failed(w, "write");
	if (ftruncate(fd, old->st_size) < 0)
		write_failed(w, "finish rewriting");
	return false;
}

static const struct stat *owner_alone(struct stat *status)
{
	*status = (struct stat){ .st_mode = 0600, .st_uid = geteuid(), .st_gid = getegid() };
	return status;
}

/* Writes the new content elsewhere: beside the file, else among the user's state. NULL, errno set,
 * where that cannot be; else the copy's name. */
static char *copy_keep(const struct writing *w)
{
	char *const places[] = { path_beside(w->path, ".", FILE_COPY),
		path_in_state(w->path, FILE_COPY) };
	struct stat mode;
	char *kept = NULL;
	int cause = 0;

	for (size_t i = 0; i < sizeof places / sizeof *places; i++) {
		const struct writing copy = { places[i], w->content, w->error };

		if (places[i] && !kept && (i == 0 || folder_make(places[i])) &&
		    put_new(&copy, owner_alone(&mode), true))
			kept = places[i];
		else if (places[i] && !kept)
			cause = errno;
		if (places[i] != kept)
			free(places[i]);
	}
	errno = cause;
	return kept;
}

static bool bytes_copy(int from, int to)
{
	char buffer[PART_BYTES];
	ssize_t got;

	while ((got = read(from, buffer, sizeof buffer)) != 0) {
		if (got < 0 && errno == EINTR)
			continue;
		if (got < 0 || !fd_put(to, buffer, (size_t)got))
			return false;
	}
	return true;
}

/* Writes the copy over the file itself; *is_begun where that may have spoilt it. */
static bool put_in_place(const struct writing *w, const struct stat *old, int copy, bool *is_begun)
{
	int fd = open(w->path, O_WRONLY | O_CLOEXEC | O_NOFOLLOW);
	struct stat new;
	bool done;

	if (fd < 0 || fstat(copy, &new) < 0)
		return finish(fd, false) || write_failed(w, "write");
	if (!room_take(w, fd, new.st_size, old))
		return finish(fd, false);
	*is_begun = true;
	done = bytes_copy(copy, fd) && ftruncate(fd, new.st_size) == 0 && fsync(fd) == 0;
	return finish(fd, done) || write_failed(w, "finish rewriting");
}

/* Writes over the file itself while a copy of what it is to be is on the disk. */
static bool rewrite(const struct writing *w, const struct stat *old)
{
	char *copy = copy_keep(w);
	bool done, is_begun = false;
	int fd;

	if (!copy)
		return write_failed(w, errno == ENOSPC || errno == EDQUOT || errno == EFBIG ?
			"write" : "keep a copy before writing over");
	fd = open(copy, O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
	done = fd < 0 ? write_failed(w, "write") : put_in_place(w, old, fd, &is_begun);
	if (fd >= 0)
		close(fd);
	if (done || !is_begun)
		unlink(copy);
	else
		sentence_add(w->error, "; what it should hold is in ", copy);
	free(copy);
	return done;
}

static bool write_over(const struct writing *w)
{
	struct stat old;
	bool exists = lstat(w->path, &old) == 0;

	if (!exists && errno != ENOENT)
		return write_failed(w, "write");
	if (exists && !S_ISREG(old.st_mode))
		return fail_kind(w->error, "write", w->path, old.st_mode);
	if (exists && faccessat(AT_FDCWD, w->path, W_OK, AT_EACCESS) < 0)
		return write_failed(w, "write");
	if (exists && old.st_nlink > 1)
		return rewrite(w, &old);
	if (put_new(w, exists ? &old : NULL, true))
		return true;
	if (exists && (errno == EACCES || errno == EPERM || errno == EROFS))
		return rewrite(w, &old);
	return write_failed(w, "write");
}

bool file_print(const char *path, const struct file_content *content, struct file_error *error)
{
	char *real = path_followed(path);
	struct writing w = { real, content, error };
	bool done;

	if (!real)
		return fail_errno(error, "write", path);
	done = write_over(&w);
	free(real);
	return done;
}

/* Bytes that are all there. */
struct whole {
	const char *bytes;
	size_t length;
};

static void print_whole(struct sink *sink, const void *context)
{
	const struct whole *whole = context;

	sink_add_bytes(sink, whole->bytes, whole->length);
}

bool file_write(const char *path, const char *bytes, size_t length, struct file_error *error)
{
	const struct whole whole = { bytes, length };

	return file_print(path, &(struct file_content){ print_whole, &whole }, error);
}

bool file_write_new(const char *path, const char *like, const struct text *text,
	struct file_error *error)
{
	const struct whole whole = { text->bytes, text->length };
	const struct file_content content = { print_whole, &whole };
	const struct writing w = { path, &content, error };
	struct stat status;

	if (stat(like, &status) < 0)
		owner_alone(&status);
	return put_new(&w, &status, false) || write_failed(&w, "write");
}
