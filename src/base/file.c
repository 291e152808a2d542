#include "base/file.h"
#include "base/memory.h"
#include "base/path.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { PATH_SHOWN = 150 };

static bool fail(struct file_error *error, const char *act, const char *path, const char *why)
{
	size_t shown = strnlen(path, PATH_SHOWN);

	/* Not half a character. */
	while (path[shown] && ((unsigned char)path[shown] & 0xC0) == 0x80)
		shown--;
	snprintf(error->sentence, sizeof error->sentence, "cannot %s %.*s%s: %s", act, (int)shown,
		path, path[shown] ? "..." : path[0] ? "" : "\"\"", why);
	return false;
}

static bool fail_errno(struct file_error *error, const char *act, const char *path)
{
	return fail(error, act, path, strerror(errno));
}

static bool fail_kind(struct file_error *error, const char *act, const char *path, mode_t mode)
{
	return fail(error, act, path,
		S_ISDIR(mode) ? "it is a directory" : "it is not a regular file");
}

/* Reads to the end of fd, or to just over `most` bytes, into an empty text. */
static bool read_all(int fd, size_t most, struct text *out)
{
	char buffer[65536];

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

static bool write_all(int fd, const char *bytes, size_t length)
{
	while (length) {
		ssize_t put = write(fd, bytes, length);

		if (put < 0 && errno == EINTR)
			continue;
		if (put < 0)
			return false;
		bytes += put;
		length -= (size_t)put;
	}
	return true;
}

/* Gives a new file the mode and, where that is allowed, the owner and group of another. */
static bool mode_copy(int fd, const struct stat *like)
{
	mode_t mode = like->st_mode & 07777;

	if (fchown(fd, like->st_uid, like->st_gid) < 0 && fchown(fd, (uid_t)-1, like->st_gid) < 0)
		mode &= 0707; /* the group is another: give it nothing */
	return fchmod(fd, mode) == 0;
}

static void directory_sync(const char *path)
{
	size_t length = path_folder(path);
	char *folder = memory_bytes(path, length);
	int fd = open(length ? folder : ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);

	if (fd >= 0) {
		/* Some file systems cannot sync a directory: the file itself is safe by now. */
		(void)fsync(fd);
		close(fd);
	}
	free(folder);
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

	if (close(fd) < 0 && done)
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

enum { SINK_BYTES = 64 * 1024 };

/* Into a file, in large pieces. */
struct fd_sink {
	struct sink sink; /* first */
	int fd, cause;    /* cause: errno of the first failure, 0 without one */
	size_t held;
	char *bytes;
};

static void fd_flush(struct fd_sink *to)
{
	if (to->cause == 0 && !write_all(to->fd, to->bytes, to->held))
		to->cause = errno;
	to->held = 0;
}

static void fd_write(struct sink *sink, const char *bytes, size_t length)
{
	struct fd_sink *to = (struct fd_sink *)sink;

	while (length > 0 && to->cause == 0) {
		size_t room = SINK_BYTES - to->held, part = length < room ? length : room;

		memcpy(to->bytes + to->held, bytes, part);
		to->held += part;
		bytes += part;
		length -= part;
		if (to->held == SINK_BYTES)
			fd_flush(to);
	}
}

static bool content_write(const struct writing *w, int fd)
{
	struct fd_sink to = { .sink = { fd_write }, .fd = fd, .bytes = memory_new(SINK_BYTES, 1) };

	w->content->print(&to.sink, w->content->context);
	fd_flush(&to);
	free(to.bytes);
	if (to.cause == 0 && fsync(fd) == 0)
		return true;
	if (to.cause)
		errno = to.cause;
	return false;
}

/* Writes a new file and renames it over what has the name; errno says what failed. It gets mode
 * and owner of `like`; NULL: those of any new file. */
static bool replace(const struct writing *w, const struct stat *like)
{
	struct text name = TEXT_EMPTY;
	int fd;
	bool done;

	/* As short as the path's own may be long. */
	text_add_bytes(&name, w->path, path_folder(w->path));
	text_add(&name, ".parterre-XXXXXX");
	fd = mkostemp(name.bytes, O_CLOEXEC);
	done = fd >= 0;
	if (done) {
		int cause;

		done = (like ? mode_copy(fd, like) : fchmod(fd, mode_new()) == 0) &&
			content_write(w, fd);
		done = finish(fd, done) && rename(name.bytes, w->path) == 0;
		cause = errno;
		if (done)
			directory_sync(w->path);
		else
			unlink(name.bytes);
		errno = cause;
	}
	text_fini(&name);
	return done;
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

/* Writes over the file itself. */
static bool rewrite(const struct writing *w, const struct stat *old)
{
	int fd = open(w->path, O_WRONLY | O_CLOEXEC | O_NOFOLLOW);
	struct counting_sink counted = counting_sink();
	off_t length;
	bool done;

	if (fd < 0)
		return write_failed(w, "write");
	w->content->print(&counted.sink, w->content->context);
	length = (off_t)counted.length;
	if (!room_take(w, fd, length, old))
		return finish(fd, false);
	done = content_write(w, fd) && ftruncate(fd, length) == 0 && fsync(fd) == 0;
	return finish(fd, done) || write_failed(w, "finish rewriting");
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
	if (replace(w, exists ? &old : NULL))
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

bool file_write_like(const char *path, const char *like, const struct text *text,
	struct file_error *error)
{
	const struct whole whole = { text->bytes, text->length };
	const struct file_content content = { print_whole, &whole };
	struct writing w = { path, &content, error };
	struct stat status = { .st_mode = 0600, .st_uid = geteuid(), .st_gid = getegid() };

	(void)stat(like, &status);
	return replace(&w, &status) || write_failed(&w, "write");
}

struct file_stamp file_stamp(const char *path)
{
	struct stat status;

	if (stat(path, &status) < 0)
		return (struct file_stamp){ .exists = false };
	return (struct file_stamp){ true, S_ISREG(status.st_mode), status.st_dev, status.st_ino,
		status.st_size, status.st_mtim };
}

bool file_stamp_equal(const struct file_stamp *a, const struct file_stamp *b)
{
	if (!a->exists || !b->exists)
		return a->exists == b->exists;
	return a->device == b->device && a->inode == b->inode && a->size == b->size &&
		a->changed.tv_sec == b->changed.tv_sec &&
		a->changed.tv_nsec == b->changed.tv_nsec;
}

bool file_is_same(const char *a, const char *b)
{
	struct file_stamp one = file_stamp(a), other = file_stamp(b);

	return one.exists && other.exists && one.device == other.device &&
		one.inode == other.inode;
}
