package record

import (
	"errors"
	"fmt"
	"time"
)

const (
	lockEnding = ".lock"
	lockPause  = 2 * time.Millisecond
	lockWait   = 30 * time.Second // a disk on its last legs can take long to sync
)

var errHeld = errors.New("held by another writer")

// Lock waits until no other process or goroutine holds the lock of the file, and takes it. The system frees it when the
// process ends, so a lock is never left over; the empty file PATH.lock stays.
func Lock(path string) (unlock func(), err error) {
	for waited := time.Duration(0); ; waited += lockPause {
		file, err := tryLock(path + lockEnding)
		if err == nil {
			return func() { _ = file.Close() }, nil
		}
		if !errors.Is(err, errHeld) {
			return nil, fmt.Errorf("nothing was written, for the lock file cannot be used: %w", err)
		}
		if waited >= lockWait {
			return nil, fmt.Errorf("nothing was written: another program has held %s for more than %s: end it, or try again", path+lockEnding, lockWait)
		}
		time.Sleep(lockPause)
	}
}
