//go:build darwin || dragonfly || freebsd || linux || netbsd || openbsd

package record

import (
	"errors"
	"os"
	"syscall"
)

// tryLock takes the lock, which belongs to the open file, or says errHeld.
func tryLock(path string) (*os.File, error) {
	file, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o666)
	if err != nil {
		return nil, err
	}
	for {
		err = syscall.Flock(int(file.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
		if err != syscall.EINTR {
			break
		}
	}
	if err == nil {
		return file, nil
	}
	if errors.Is(err, syscall.EWOULDBLOCK) {
		err = errHeld
	}
	return nil, errors.Join(err, file.Close())
}

// syncFolder makes the name of a new file last. Some file systems cannot, and say so with EINVAL.
func syncFolder(path string) error {
	folder, err := os.Open(path)
	if err != nil {
		return err
	}
	defer folder.Close()
	if err := folder.Sync(); !errors.Is(err, syscall.EINVAL) {
		return err
	}
	return nil
}
