/* Files read whole and written so that the old or the new one is always there. */
#include "base/file.h"
#include "base/path.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <grp.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <unistd.h>

enum { NOBODY = 65534, NAMES = 8, NAME_ROOM = 1024 };

static char *folder;
static struct file_error error;

static void folder_new(void)
{
	folder = scratch_new();
}

static void folder_remove(void)
{
	scratch_remove(folder);
}

/* The path of a name in the folder; good until NAMES more are asked for. */
static const char *in(const char *name)
{
	static char paths[NAMES][NAME_ROOM];
	static int next;
	char *path = paths[next = (next + 1) % NAMES];

	snprintf(path, NAME_ROOM, "%s/%s", folder, name);
	return path;
}

/* Makes a file in the plain way, with a mode. */
static void make(const char *name, const char *text, mode_t mode)
{
	FILE *file = fopen(in(name), "w");

	ck_assert_ptr_nonnull(file);
	fputs(text, file);
	ck_assert_int_eq(fclose(file), 0);
	ck_assert_int_eq(chmod(in(name), mode), 0);
}

static struct stat status_of(const char *name)
{
	struct stat status;

	ck_assert_msg(lstat(in(name), &status) == 0, "%s is not there", name);
	return status;
}

static void check_holds(const char *name, const char *text)
{
	char bytes[256] = "";
	FILE *file = fopen(in(name), "r");

	ck_assert_msg(file != NULL, "%s is not there", name);
	bytes[fread(bytes, 1, sizeof bytes - 1, file)] = '\0';
	fclose(file);
	ck_assert_str_eq(bytes, text);
}

static int entries(void)
{
	DIR *list = opendir(folder);
	int count = -2; /* itself and the one above */

	while (readdir(list))
		count++;
	closedir(list);
	return count;
}

static bool write_to(const char *path, const char *text)
{
	return file_write(path, text, strlen(text), &error);
}

static void check_fails(const char *path, const char *sentence)
{
	ck_assert(!write_to(path, "new"));
	ck_assert_msg(strstr(error.sentence, sentence), "%s", error.sentence);
}

/* Whom the rights of files bind: root, who may do all, becomes nobody for a while. One stands in
 * the folder, since nobody may not be let through to it. */
static char *stood_in, *folder_whole;

static void plain_user(void)
{
	stood_in = realpath(".", NULL);
	folder_whole = folder;
	ck_assert_int_eq(chdir(folder), 0);
	folder = strdup(".");
	if (getuid() == 0) {
		ck_assert_int_eq(chown(".", NOBODY, NOBODY), 0);
		ck_assert_int_eq(setegid(NOBODY), 0);
		ck_assert_int_eq(seteuid(NOBODY), 0);
	}
}

static void usual_user(void)
{
	if (getuid() == 0) {
		ck_assert_int_eq(seteuid(0), 0);
		ck_assert_int_eq(setegid(0), 0);
	}
	ck_assert_int_eq(chdir(stood_in), 0);
	free(stood_in);
	free(folder);
	folder = folder_whole;
}

/* ---- Reading --------------------------------------------------------------------------------- */

START_TEST(a_file_is_read_whole_in_place_of_what_was_there)
{
	struct text text = TEXT_EMPTY;

	make("file", "one\ntwo", 0600);
	text_add(&text, "old");
	ck_assert(file_read(in("file"), 7, &text, &error));
	ck_assert_str_eq(text.bytes, "one\ntwo");
	ck_assert_uint_eq(text.length, 7);
	make("empty", "", 0600);
	ck_assert(file_read(in("empty"), 7, &text, &error));
	ck_assert_str_eq(text.bytes, "");
	ck_assert_uint_eq(text.length, 0);
	text_fini(&text);
	ck_assert(file_read(in("empty"), 0, &text, &error));
	ck_assert_str_eq(text.bytes, "");
	text_fini(&text);
}
END_TEST

START_TEST(a_long_file_is_read_to_its_last_byte)
{
	enum { LENGTH = 300001 };
	char *bytes = malloc(LENGTH);
	struct text text = TEXT_EMPTY;
	struct random random = { 1 };

	for (int i = 0; i < LENGTH; i++)
		bytes[i] = (char)random_next(&random);
	ck_assert(file_write(in("long"), bytes, LENGTH, &error));
	ck_assert(file_read(in("long"), LENGTH, &text, &error));
	ck_assert_uint_eq(text.length, LENGTH);
	ck_assert_mem_eq(text.bytes, bytes, LENGTH);
	ck_assert(!file_read(in("long"), LENGTH - 1, &text, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "File too large"));
	text_fini(&text);
	free(bytes);
}
END_TEST

START_TEST(what_is_no_regular_file_is_not_read)
{
	struct text text = TEXT_EMPTY;

	ck_assert(!file_read(in("missing"), 9, &text, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "cannot open "));
	ck_assert_ptr_nonnull(strstr(error.sentence, "/missing: No such file or directory"));
	ck_assert(!file_read(folder, 9, &text, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, ": it is a directory"));
	/* With nobody at its other end a pipe would be waited for. */
	ck_assert_int_eq(mkfifo(in("pipe"), 0600), 0);
	ck_assert(!file_read(in("pipe"), 9, &text, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, ": it is not a regular file"));
	ck_assert(!file_read("/dev/zero", 9, &text, &error));
	ck_assert_str_eq(error.sentence, "cannot read /dev/zero: it is not a regular file");
	text_fini(&text);
}
END_TEST

START_TEST(a_file_one_may_not_read_is_refused)
{
	struct text text = TEXT_EMPTY;

	make("secret", "x", 0000);
	plain_user();
	ck_assert(!file_read("secret", 9, &text, &error));
	ck_assert_str_eq(error.sentence, "cannot open secret: Permission denied");
	usual_user();
	text_fini(&text);
}
END_TEST

START_TEST(a_dash_is_standard_input_whatever_that_is)
{
	struct text text = TEXT_EMPTY;
	int kept = dup(STDIN_FILENO), ends[2];

	ck_assert_int_eq(pipe(ends), 0);
	ck_assert_int_eq(write(ends[1], "piped", 5), 5);
	close(ends[1]);
	dup2(ends[0], STDIN_FILENO);
	ck_assert(file_read("-", 5, &text, &error));
	ck_assert_str_eq(text.bytes, "piped");
	close(ends[0]);
	int endless = open("/dev/zero", O_RDONLY);
	dup2(endless, STDIN_FILENO);
	close(endless);
	ck_assert(!file_read("-", 1000, &text, &error));
	ck_assert_str_eq(error.sentence, "cannot read -: File too large");
	ck_assert_uint_lt(text.length, 1000000);
	dup2(kept, STDIN_FILENO);
	close(kept);
	text_fini(&text);
}
END_TEST

START_TEST(a_long_path_is_cut_between_characters)
{
	for (size_t lead = 0; lead < 4; lead++) {
		char path[2000] = "/";
		struct text text = TEXT_EMPTY;

		memset(path + 1, 'x', lead);
		for (int i = 0; i < 400; i++)
			strcat(path, "\xE2\x82\xAC");
		ck_assert(!file_read(path, 9, &text, &error));
		char *dots = strstr(error.sentence, "...: File name too long");
		ck_assert_ptr_nonnull(dots);
		ck_assert_int_eq((unsigned char)dots[-1], 0xAC);
		ck_assert(!file_read("", 9, &text, &error));
		ck_assert_str_eq(error.sentence, "cannot open \"\": No such file or directory");
		text_fini(&text);
	}
}
END_TEST

/* ---- Writing --------------------------------------------------------------------------------- */

START_TEST(a_new_file_has_the_mode_that_new_files_have)
{
	mode_t mask = umask(027);

	ck_assert(write_to(in("file"), "text"));
	ck_assert_int_eq(umask(mask), 027);
	check_holds("file", "text");
	ck_assert_int_eq(status_of("file").st_mode, S_IFREG | 0640);
	ck_assert_int_eq(entries(), 1);
	ck_assert(write_to(in("none"), ""));
	check_holds("none", "");
}
END_TEST

START_TEST(a_file_is_replaced_and_its_mode_kept)
{
	static const mode_t modes[] = { 0600, 0640, 0644, 0755, 0666, 0604 };
	struct stat was;

	make("file", "a much longer old text", modes[_i]);
	was = status_of("file");
	ck_assert(write_to(in("file"), "new"));
	check_holds("file", "new");
	ck_assert_int_eq(status_of("file").st_mode, S_IFREG | modes[_i]);
	ck_assert_int_eq(status_of("file").st_uid, was.st_uid);
	ck_assert_int_eq(status_of("file").st_gid, was.st_gid);
	ck_assert_msg(status_of("file").st_ino != was.st_ino, "it was written over");
	ck_assert_int_eq(entries(), 1);
}
END_TEST

/* Someone else's, shared with a group; only root can make one. Who is of the group keeps it; who is
 * not may write where all may, and gives the other group nothing. */
START_TEST(the_group_of_anothers_file_is_kept_by_who_is_of_it)
{
	const gid_t shared = 4242;
	mode_t mode = _i ? 0666 : 0660;
	struct stat now;

	if (getuid() != 0)
		return;
	make("file", "old", mode);
	ck_assert_int_eq(chmod(in("file"), mode), 0);
	ck_assert_int_eq(chown(in("file"), 0, shared), 0);
	ck_assert_int_eq(setgroups(_i ? 0 : 1, &shared), 0);
	plain_user();
	ck_assert_msg(write_to(in("file"), "new"), "%s", error.sentence);
	usual_user();
	ck_assert_int_eq(setgroups(0, NULL), 0);
	now = status_of("file");
	ck_assert_int_eq(now.st_uid, NOBODY);
	ck_assert_int_eq(now.st_gid, _i ? NOBODY : shared);
	ck_assert_int_eq(now.st_mode, S_IFREG | (_i ? 0606 : 0660));
}
END_TEST

START_TEST(who_has_the_old_file_open_still_reads_the_old_text)
{
	char bytes[8] = "";
	int fd;

	make("file", "old", 0600);
	fd = open(in("file"), O_RDONLY);
	ck_assert(write_to(in("file"), "new"));
	ck_assert_int_eq(read(fd, bytes, 7), 3);
	ck_assert_str_eq(bytes, "old");
	close(fd);
}
END_TEST

START_TEST(a_link_is_kept_and_what_it_leads_to_is_replaced)
{
	make("target", "old", 0640);
	ck_assert_int_eq(mkdir(in("sub"), 0700), 0);
	ck_assert_int_eq(symlink("../target", in("sub/link")), 0);
	ck_assert_int_eq(symlink(in("sub/link"), in("far")), 0);
	ck_assert(write_to(in("far"), "new"));
	ck_assert(S_ISLNK(status_of("far").st_mode));
	ck_assert(S_ISLNK(status_of("sub/link").st_mode));
	ck_assert_int_eq(status_of("target").st_mode, S_IFREG | 0640);
	check_holds("target", "new");
	ck_assert_int_eq(entries(), 3);
}
END_TEST

START_TEST(a_dangling_link_is_kept_and_its_target_made)
{
	ck_assert_int_eq(symlink("target", in("link")), 0);
	ck_assert(write_to(in("link"), "new"));
	ck_assert(S_ISLNK(status_of("link").st_mode));
	ck_assert(S_ISREG(status_of("target").st_mode));
	check_holds("target", "new");
	ck_assert_int_eq(symlink("nowhere/target", in("lost")), 0);
	check_fails(in("lost"), "No such file or directory");
	ck_assert(S_ISLNK(status_of("lost").st_mode));
}
END_TEST

START_TEST(links_in_a_circle_are_refused)
{
	ck_assert_int_eq(symlink("b", in("a")), 0);
	ck_assert_int_eq(symlink("a", in("b")), 0);
	check_fails(in("a"), "/a: Too many levels of symbolic links");
	ck_assert_int_eq(entries(), 2);
}
END_TEST

START_TEST(other_hard_links_see_the_new_text)
{
	struct stat was;

	make("file", "a longer old text", 0640);
	ck_assert_int_eq(link(in("file"), in("other")), 0);
	was = status_of("file");
	ck_assert(write_to(in("file"), "new"));
	check_holds("file", "new");
	check_holds("other", "new");
	ck_assert(status_of("other").st_ino == was.st_ino);
	ck_assert_int_eq(status_of("other").st_mode, S_IFREG | 0640);
	ck_assert(write_to(in("other"), "a text that is longer than the one before"));
	check_holds("file", "a text that is longer than the one before");
	ck_assert_int_eq(entries(), 2);
}
END_TEST

START_TEST(what_is_no_regular_file_is_not_written_over)
{
	struct sockaddr_un name = { .sun_family = AF_UNIX };
	int fd = socket(AF_UNIX, SOCK_STREAM, 0);
	char *was = realpath(".", NULL);

	ck_assert_int_eq(mkfifo(in("pipe"), 0600), 0);
	check_fails(in("pipe"), ": it is not a regular file");
	ck_assert(S_ISFIFO(status_of("pipe").st_mode));
	ck_assert_int_eq(symlink("pipe", in("link")), 0);
	check_fails(in("link"), ": it is not a regular file");
	ck_assert(S_ISFIFO(status_of("pipe").st_mode));
	check_fails(folder, ": it is a directory");
	ck_assert_int_eq(chdir(folder), 0); /* a socket's path is short */
	strcpy(name.sun_path, "socket");
	ck_assert_int_eq(bind(fd, (struct sockaddr *)&name, sizeof name), 0);
	ck_assert_int_eq(chdir(was), 0);
	check_fails(in("socket"), ": it is not a regular file");
	ck_assert(S_ISSOCK(status_of("socket").st_mode));
	close(fd);
	ck_assert_int_eq(entries(), 3);
	free(was);
}
END_TEST

START_TEST(a_path_that_leads_nowhere_is_refused)
{
	check_fails("", "cannot write \"\": ");
	check_fails(in("no/file"), "/no/file: No such file or directory");
	make("file", "old", 0600);
	check_fails(in("file/file"), "Not a directory");
	check_holds("file", "old");
	ck_assert_int_eq(entries(), 1);
}
END_TEST

START_TEST(a_name_as_long_as_names_may_be_is_written)
{
	char name[256];

	memset(name, 'n', 255);
	name[255] = '\0';
	ck_assert(write_to(in(name), "old"));
	ck_assert(write_to(in(name), "new"));
	check_holds(name, "new");
	ck_assert_int_eq(entries(), 1);
}
END_TEST

START_TEST(a_relative_path_is_written_where_one_stands)
{
	char *was = realpath(".", NULL);

	ck_assert_int_eq(chdir(folder), 0);
	ck_assert(write_to("file", "old"));
	ck_assert(write_to("file", "new"));
	ck_assert_int_eq(chdir(was), 0);
	check_holds("file", "new");
	ck_assert_int_eq(entries(), 1);
	free(was);
}
END_TEST

START_TEST(a_file_one_may_not_write_is_refused_though_its_folder_is_free)
{
	plain_user();
	make("file", "old", 0444);
	check_fails("file", "cannot write file: Permission denied");
	check_holds("file", "old");
	ck_assert_int_eq(entries(), 1);
	usual_user();
}
END_TEST

/* Has the user's state in a folder of that name. */
static void state_in(const char *name)
{
	char *path;

	ck_assert_int_eq(mkdir(name, 0700), 0);
	path = realpath(name, NULL);
	setenv("XDG_STATE_HOME", path, 1);
	free(path);
}

START_TEST(in_a_folder_that_takes_no_new_file_the_old_one_is_written_over)
{
	struct stat status;

	plain_user();
	make("file", "a longer old text", 0600);
	status = status_of("file");
	state_in("state");
	ck_assert_int_eq(chmod(".", 0500), 0);
	ck_assert_msg(write_to("file", "new"), "%s", error.sentence);
	check_holds("file", "new");
	ck_assert(status_of("file").st_ino == status.st_ino);
	check_fails("another", "cannot write another: Permission denied");
	ck_assert_int_eq(entries(), 2);
	ck_assert_int_eq(rmdir("state/parterre"), 0); /* nothing is left in it */
	/* Without a place for a copy the old text stays. */
	setenv("XDG_STATE_HOME", "/nowhere", 1);
	check_fails("file", "cannot keep a copy before writing over file: ");
	check_holds("file", "new");
	ck_assert_int_eq(chmod(".", 0700), 0);
	usual_user();
}
END_TEST

/* No file may grow over the limit: writes stop midway, as on a full disk. */
static bool write_limited(const char *path, size_t length, rlim_t most)
{
	struct rlimit was, now;
	char *bytes = malloc(length);
	bool done;

	memset(bytes, 'n', length);
	getrlimit(RLIMIT_FSIZE, &was);
	now = (struct rlimit){ most, was.rlim_max };
	signal(SIGXFSZ, SIG_IGN);
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &now), 0);
	done = file_write(path, bytes, length, &error);
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &was), 0);
	free(bytes);
	return done;
}

START_TEST(what_does_not_fit_leaves_the_old_file_whole)
{
	make("file", "old", 0600);
	ck_assert(!write_limited(in("file"), 100000, 50000));
	ck_assert_ptr_nonnull(strstr(error.sentence, "cannot write "));
	ck_assert_ptr_nonnull(strstr(error.sentence, "/file: File too large"));
	check_holds("file", "old");
	ck_assert_int_eq(entries(), 1);
	ck_assert(!write_limited(in("new"), 100000, 50000));
	ck_assert_int_eq(entries(), 1);
}
END_TEST

START_TEST(what_does_not_fit_leaves_a_file_with_two_names_whole)
{
	make("file", "old", 0600);
	ck_assert_int_eq(link(in("file"), in("other")), 0);
	ck_assert(!write_limited(in("file"), 100000, 50000));
	ck_assert_ptr_nonnull(strstr(error.sentence, "cannot write "));
	ck_assert_ptr_nonnull(strstr(error.sentence, "/file: File too large"));
	check_holds("other", "old");
	ck_assert_int_eq(status_of("other").st_size, 3);
	ck_assert_int_eq(entries(), 2);
}
END_TEST

/* Writes texts of one letter, a to d in turn, of some 100 kB, for ever. */
static void write_for_ever(const char *path)
{
	enum { LENGTH = 100000 };
	char *bytes = malloc(LENGTH);

	for (int i = 0;; i++) {
		memset(bytes, 'a' + i % 4, LENGTH);
		if (!file_write(path, bytes, LENGTH - (size_t)(i % 4), &error))
			_exit(1);
	}
}

START_TEST(a_writer_killed_at_any_moment_leaves_one_whole_text)
{
	struct random random = { 11 };
	struct text text = TEXT_EMPTY;

	ck_assert(write_to(in("file"), "d"));
	/* Where the machine is slow a writer gets more time, until one got through. */
	for (int round = 0; round < 25 || (text.length == 1 && round < 500); round++) {
		const char *path = in("file");
		pid_t child = fork();

		if (child == 0)
			write_for_ever(path);
		usleep((useconds_t)random_between(&random, 500, 20000) *
			(useconds_t)(1 + round / 25));
		kill(child, SIGKILL);
		ck_assert_int_eq(waitpid(child, NULL, 0), child);
		ck_assert(file_read(path, 1000000, &text, &error));
		ck_assert(text.length == 1 ||
			text.length == 100000 - (size_t)(text.bytes[0] - 'a'));
		ck_assert_uint_eq(strspn(text.bytes, (char[]){ text.bytes[0], '\0' }), text.length);
	}
	ck_assert_msg(text.length > 1, "it was never written");
	text_fini(&text);
}
END_TEST

/* ---- Files like others ----------------------------------------------------------------------- */

static bool write_new(const char *path, const char *like, const char *string)
{
	struct text text = TEXT_EMPTY;
	bool done;

	text_add(&text, string);
	done = file_write_new(path, like, &text, &error);
	text_fini(&text);
	return done;
}

START_TEST(a_file_beside_another_is_no_more_public_than_that)
{
	make("plot", "plot", 0640);
	ck_assert(write_new(in("side"), in("plot"), "new"));
	check_holds("side", "new");
	ck_assert_int_eq(status_of("side").st_mode, S_IFREG | 0640);
	ck_assert(write_new(in("alone"), in("missing"), "new"));
	ck_assert_int_eq(status_of("alone").st_mode, S_IFREG | 0600);
	ck_assert_int_eq(entries(), 3);
}
END_TEST

START_TEST(what_has_its_name_already_is_neither_replaced_nor_followed)
{
	make("target", "kept", 0600);
	ck_assert_int_eq(symlink("target", in("link")), 0);
	ck_assert_int_eq(symlink("nowhere", in("lost")), 0);
	ck_assert_int_eq(mkdir(in("folder"), 0700), 0);
	for (int i = 0; i < 4; i++) {
		const char *name = (const char *[]){ "target", "link", "lost", "folder" }[i];

		ck_assert(!write_new(in(name), in("target"), "new"));
		ck_assert_int_eq(errno, EEXIST);
	}
	check_holds("target", "kept");
	ck_assert_int_eq(entries(), 4);
}
END_TEST

/* ---- Stamps and names ------------------------------------------------------------------------ */

START_TEST(a_stamp_changes_with_the_file)
{
	struct timespec times[2] = { { .tv_nsec = UTIME_OMIT }, { 1000, 5 } };
	struct file_stamp first = file_stamp(in("file")), second, third;

	ck_assert(!first.exists);
	second = file_stamp(in("another"));
	ck_assert(file_stamp_equal(&first, &second));
	make("file", "text", 0600);
	second = file_stamp(in("file"));
	ck_assert(second.exists && second.is_regular && second.size == 4);
	ck_assert(!file_stamp_equal(&first, &second) && !file_stamp_equal(&second, &first));
	third = file_stamp(in("file"));
	ck_assert(file_stamp_equal(&second, &third));
	ck_assert_int_eq(utimensat(AT_FDCWD, in("file"), times, 0), 0);
	second = file_stamp(in("file"));
	ck_assert(!file_stamp_equal(&second, &third));
	times[1].tv_nsec++;
	ck_assert_int_eq(utimensat(AT_FDCWD, in("file"), times, 0), 0);
	third = file_stamp(in("file"));
	ck_assert(!file_stamp_equal(&second, &third));
	/* The same time and size in another file: only the inode tells. */
	make("copy", "text", 0600);
	ck_assert_int_eq(utimensat(AT_FDCWD, in("copy"), times, 0), 0);
	second = file_stamp(in("copy"));
	ck_assert(!file_stamp_equal(&second, &third));
	/* The same inode and time with another size. */
	make("copy", "texts", 0600);
	ck_assert_int_eq(utimensat(AT_FDCWD, in("copy"), times, 0), 0);
	third = file_stamp(in("copy"));
	ck_assert(!file_stamp_equal(&second, &third));
	ck_assert(!file_stamp(folder).is_regular);
}
END_TEST

START_TEST(one_file_is_known_by_all_its_names)
{
	make("file", "text", 0600);
	make("another", "text", 0600);
	ck_assert_int_eq(symlink("file", in("soft")), 0);
	ck_assert_int_eq(link(in("file"), in("hard")), 0);
	ck_assert(file_is_same(in("file"), in("file")));
	ck_assert(file_is_same(in("file"), in("soft")));
	ck_assert(file_is_same(in("soft"), in("hard")));
	ck_assert(!file_is_same(in("file"), in("another")));
	ck_assert(!file_is_same(in("missing"), in("missing")));
	ck_assert(!file_is_same(in("file"), in("missing")));
}
END_TEST

START_TEST(an_open_file_is_known_at_its_names_alone)
{
	int fd;

	make("file", "text", 0600);
	make("another", "text", 0600);
	ck_assert_int_eq(symlink("file", in("soft")), 0);
	ck_assert_int_eq(link(in("file"), in("hard")), 0);
	fd = open(in("file"), O_RDONLY);
	ck_assert(file_is_at(fd, in("file")));
	ck_assert(file_is_at(fd, in("hard")));
	ck_assert(!file_is_at(fd, in("soft")));
	ck_assert(!file_is_at(fd, in("another")));
	ck_assert_int_eq(rename(in("another"), in("file")), 0);
	ck_assert(!file_is_at(fd, in("file")));
	close(fd);
}
END_TEST

static void check_parent(const char *path, const char *expected)
{
	char *parent = path_parent(path);

	ck_assert_str_eq(parent, expected);
	free(parent);
}

START_TEST(the_folder_of_a_bare_name_is_where_one_stands)
{
	check_parent("court.plot", ".");
	check_parent("a/b/court.plot", "a/b/");
	check_parent("/court.plot", "/");
}
END_TEST

static void check_beside(const char *path, const char *expected)
{
	char *name = path_beside(path, ".", ".lock");

	ck_assert_str_eq(name, expected);
	free(name);
}

START_TEST(a_name_beside_a_file_is_the_same_by_all_links_to_it)
{
	char expected[NAME_ROOM];

	check_beside("court.plot", ".court.plot.lock");
	check_beside("a/b/court.plot", "a/b/.court.plot.lock");
	check_beside("/court.plot", "/.court.plot.lock");
	make("file", "", 0600);
	ck_assert_int_eq(mkdir(in("sub"), 0700), 0);
	ck_assert_int_eq(symlink("../file", in("sub/soft")), 0);
	ck_assert_int_eq(symlink(in("sub/soft"), in("far")), 0);
	snprintf(expected, sizeof expected, "%s/sub/../.file.lock", folder);
	check_beside(in("sub/soft"), expected);
	check_beside(in("far"), expected);
	ck_assert_int_eq(symlink("circle", in("circle")), 0);
	snprintf(expected, sizeof expected, "%s/.circle.lock", folder);
	check_beside(in("circle"), expected);
}
END_TEST

static void add_writing(TCase *writing)
{
	tcase_add_test(writing, a_new_file_has_the_mode_that_new_files_have);
	tcase_add_loop_test(writing, a_file_is_replaced_and_its_mode_kept, 0, 6);
	tcase_add_loop_test(writing, the_group_of_anothers_file_is_kept_by_who_is_of_it, 0, 2);
	tcase_add_test(writing, who_has_the_old_file_open_still_reads_the_old_text);
	tcase_add_test(writing, a_link_is_kept_and_what_it_leads_to_is_replaced);
	tcase_add_test(writing, a_dangling_link_is_kept_and_its_target_made);
	tcase_add_test(writing, links_in_a_circle_are_refused);
	tcase_add_test(writing, other_hard_links_see_the_new_text);
	tcase_add_test(writing, what_is_no_regular_file_is_not_written_over);
	tcase_add_test(writing, a_path_that_leads_nowhere_is_refused);
	tcase_add_test(writing, a_name_as_long_as_names_may_be_is_written);
	tcase_add_test(writing, a_relative_path_is_written_where_one_stands);
	tcase_add_test(writing, a_file_one_may_not_write_is_refused_though_its_folder_is_free);
	tcase_add_test(writing, in_a_folder_that_takes_no_new_file_the_old_one_is_written_over);
	tcase_add_test(writing, what_does_not_fit_leaves_the_old_file_whole);
	tcase_add_test(writing, what_does_not_fit_leaves_a_file_with_two_names_whole);
	tcase_add_test(writing, a_writer_killed_at_any_moment_leaves_one_whole_text);
}

static void check_in_folder(const char *path, const char *name, const char *expected)
{
	char *full = path_in_folder(path, name);

	ck_assert_str_eq(full, expected);
	free(full);
}

static void check_typed(const char *name, const char *expected)
{
	char *full = path_typed(name);

	ck_assert_str_eq(full, expected);
	free(full);
}

/* As every shell has it: POSIX.1-2017, Shell Command Language, 2.6.1 Tilde Expansion, of which the
 * form with another user's name is left as it is typed. */
START_TEST(a_tilde_before_a_slash_is_the_users_home)
{
	setenv("HOME", "/home/of/mine", 1);
	check_typed("~/garden.txt", "/home/of/mine/garden.txt");
	check_typed("~", "/home/of/mine");
	check_typed("~other/garden.txt", "~other/garden.txt");
	check_typed("a~/b", "a~/b");
	check_typed("", "");
	check_in_folder("a/court.plot", "~/prices.json", "/home/of/mine/prices.json");
	unsetenv("HOME");
	check_typed("~/garden.txt", "~/garden.txt");
}
END_TEST

START_TEST(a_name_is_looked_for_in_the_folder_of_the_file_that_gives_it)
{
	char expected[4096];

	check_in_folder("court.plot", "prices.json", "prices.json");
	check_in_folder("a/b/court.plot", "prices.json", "a/b/prices.json");
	check_in_folder("a/b/court.plot", "../c/prices.json", "a/b/../c/prices.json");
	check_in_folder("a/b/court.plot", "/c/prices.json", "/c/prices.json");
	check_in_folder("/court.plot", "prices.json", "/prices.json");
	check_in_folder("-", "prices.json", "prices.json");
	check_in_folder("court.plot", "-", "./-");
	check_in_folder("a/court.plot", "-", "a/-");
	ck_assert_int_eq(mkdir(in("real"), 0777), 0);
	ck_assert_int_eq(symlink("real/court.plot", in("soft")), 0);
	snprintf(expected, sizeof expected, "%s", in("real/prices.json"));
	check_in_folder(in("soft"), "prices.json", expected);
}
END_TEST

START_TEST(a_path_without_its_ending)
{
	static const struct {
		const char *path;
		size_t stem;
	} paths[] = {
		{ "court.plot", 5 }, { "a/b.plot", 3 }, { "court", 5 }, { "court.plots", 11 },
		{ "court.Plot", 10 }, { "a.plot/b", 8 }, { "a.plot.plot", 6 }, { ".plot", 0 },
		{ "", 0 },
	};

	for (size_t i = 0; i < sizeof paths / sizeof *paths; i++)
		ck_assert_msg(path_stem(paths[i].path, ".plot") == paths[i].stem, "%s",
			paths[i].path);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("file");
	TCase *reading = suite_case(suite, "reading"), *writing = suite_case(suite, "writing"),
		*like = suite_case(suite, "like another"), *name = suite_case(suite, "names");
	TCase *const all[] = { reading, writing, like, name };

	for (size_t i = 0; i < sizeof all / sizeof *all; i++)
		tcase_add_checked_fixture(all[i], folder_new, folder_remove);
	tcase_add_test(reading, a_file_is_read_whole_in_place_of_what_was_there);
	tcase_add_test(reading, a_long_file_is_read_to_its_last_byte);
	tcase_add_test(reading, what_is_no_regular_file_is_not_read);
	tcase_add_test(reading, a_file_one_may_not_read_is_refused);
	tcase_add_test(reading, a_dash_is_standard_input_whatever_that_is);
	tcase_add_test(reading, a_long_path_is_cut_between_characters);
	add_writing(writing);
	tcase_add_test(like, a_file_beside_another_is_no_more_public_than_that);
	tcase_add_test(like, what_has_its_name_already_is_neither_replaced_nor_followed);
	tcase_add_test(name, a_stamp_changes_with_the_file);
	tcase_add_test(name, one_file_is_known_by_all_its_names);
	tcase_add_test(name, an_open_file_is_known_at_its_names_alone);
	tcase_add_test(name, the_folder_of_a_bare_name_is_where_one_stands);
	tcase_add_test(name, a_name_beside_a_file_is_the_same_by_all_links_to_it);
	tcase_add_test(name, a_name_is_looked_for_in_the_folder_of_the_file_that_gives_it);
	tcase_add_test(name, a_tilde_before_a_slash_is_the_users_home);
	tcase_add_test(name, a_path_without_its_ending);
	return suite;
}
