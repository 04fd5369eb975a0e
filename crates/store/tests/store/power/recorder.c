/* Stands between a program and its disk and writes down what is written, waited for, named and unnamed in one folder.
   Loaded before a test's process (LD_PRELOAD); the order in the log is the order in which the calls came back.
   A record: one letter, the length of a name (2), a place (8), a length (8), the name, the bytes; numbers little-endian. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#define FILES 4096
static char *names[FILES];
static pthread_mutex_t one_at_a_time = PTHREAD_MUTEX_INITIALIZER;
static int log_file = -1;

#define REAL(name) static __typeof__(name) *real; if (!real) real = (__typeof__(name) *)dlsym(RTLD_NEXT, #name)

static ssize_t plain_write(int file, const void *bytes, size_t count) { REAL(write); return real(file, bytes, count); }

static int is_ours(const char *path) {
    const char *folder = getenv("SNOWHUM_TEST_RECORDED");
    return folder && path && strncmp(path, folder, strlen(folder)) == 0;
}

static void note(char what, const char *name, uint64_t place, const void *bytes, uint64_t count) {
    if (log_file < 0) {
        REAL(open64);
        log_file = real(getenv("SNOWHUM_TEST_LOG"), O_WRONLY | O_CREAT | O_APPEND, 0600);
    }
    uint16_t length = strlen(name);
    plain_write(log_file, &what, 1);
    plain_write(log_file, &length, 2);
    plain_write(log_file, &place, 8);
    plain_write(log_file, &count, 8);
    plain_write(log_file, name, length);
    if (bytes) plain_write(log_file, bytes, count);
}

static const char *name_of(int file) { return file >= 0 && file < FILES ? names[file] : NULL; }

static int opened(int file, const char *path, int flags, int was_there) {
    if (file < 0 || file >= FILES || !is_ours(path)) return file;
    pthread_mutex_lock(&one_at_a_time);
    free(names[file]);
    names[file] = strdup(path);
    if (!was_there) note('c', path, 0, NULL, 0);
    else if (flags & O_TRUNC) note('t', path, 0, NULL, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return file;
}

#define OPEN(name) \
    int name(const char *path, int flags, ...) { \
        REAL(name); \
        va_list rest; va_start(rest, flags); int mode = va_arg(rest, int); va_end(rest); \
        int was_there = access(path, F_OK) == 0; \
        return opened(real(path, flags, mode), path, flags, was_there); \
    }
OPEN(open)
OPEN(open64)

int close(int file) {
    REAL(close);
    pthread_mutex_lock(&one_at_a_time);
    if (name_of(file)) { free(names[file]); names[file] = NULL; }
    pthread_mutex_unlock(&one_at_a_time);
    return real(file);
}

ssize_t write(int file, const void *bytes, size_t count) {
    REAL(write);
    if (!name_of(file)) return real(file, bytes, count);
    pthread_mutex_lock(&one_at_a_time);
    struct stat is; fstat(file, &is);
    off_t place = fcntl(file, F_GETFL) & O_APPEND ? is.st_size : lseek(file, 0, SEEK_CUR);
    ssize_t written = real(file, bytes, count);
    if (written > 0) note('w', names[file], place, bytes, written);
    pthread_mutex_unlock(&one_at_a_time);
    return written;
}

#define PWRITE(name) \
    ssize_t name(int file, const void *bytes, size_t count, off_t place) { \
        REAL(name); \
        if (!name_of(file)) return real(file, bytes, count, place); \
        pthread_mutex_lock(&one_at_a_time); \
        ssize_t written = real(file, bytes, count, place); \
        if (written > 0) note('w', names[file], place, bytes, written); \
        pthread_mutex_unlock(&one_at_a_time); \
        return written; \
    }
PWRITE(pwrite)
PWRITE(pwrite64)

#define TRUNCATE(name) \
    int name(int file, off_t length) { \
        REAL(name); \
        if (!name_of(file)) return real(file, length); \
        pthread_mutex_lock(&one_at_a_time); \
        int done = real(file, length); \
        if (done == 0) note('t', names[file], length, NULL, 0); \
        pthread_mutex_unlock(&one_at_a_time); \
        return done; \
    }
TRUNCATE(ftruncate)
TRUNCATE(ftruncate64)

#define SYNC(name) \
    int name(int file) { \
        REAL(name); \
        int done = real(file); \
        pthread_mutex_lock(&one_at_a_time); \
        if (done == 0 && name_of(file)) note('s', names[file], 0, NULL, 0); \
        pthread_mutex_unlock(&one_at_a_time); \
        return done; \
    }
SYNC(fsync)
SYNC(fdatasync)

int unlink(const char *path) {
    REAL(unlink);
    pthread_mutex_lock(&one_at_a_time);
    int done = real(path);
    if (done == 0 && is_ours(path)) note('u', path, 0, NULL, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

#define TWO(name, letter) \
    int name(const char *from, const char *to) { \
        REAL(name); \
        pthread_mutex_lock(&one_at_a_time); \
        int done = real(from, to); \
        if (done == 0 && is_ours(to)) note(letter, from, 0, to, strlen(to)); \
        pthread_mutex_unlock(&one_at_a_time); \
        return done; \
    }
TWO(rename, 'r')
TWO(link, 'l')

int linkat(int at, const char *from, int to_at, const char *to, int flags) {
    REAL(linkat);
    pthread_mutex_lock(&one_at_a_time);
    int done = real(at, from, to_at, to, flags);
    if (done == 0 && is_ours(to)) note('l', from, 0, to, strlen(to));
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}
