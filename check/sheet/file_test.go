package sheet

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func fileWith(t *testing.T, name string, data []byte) string {
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, data, 0o600))
	return path
}

// told reads a file that must fail and gives what is said after its path.
func told(t *testing.T, path string) string {
	line, err := Read(path)
	require.Error(t, err)
	assert.Nil(t, line)
	assert.IsType(t, Problems{}, err)
	return strings.TrimPrefix(err.Error(), path)
}

func TestRead(t *testing.T) {
	path := fileWith(t, "line.yaml", []byte(base))
	line, err := Read(path)
	require.NoError(t, err)
	assert.Equal(t, path, line.File)
	assert.Equal(t, "T-1", line.ID.V)
}

func TestUnreadableFiles(t *testing.T) {
	path := fileWith(t, "line.yaml", []byte(base))
	folder := filepath.Dir(path)
	assert.Equal(t, ": is a folder, not a line sheet; name the YAML file in it", told(t, folder))
	assert.Equal(t, ": no such file; did you mean line.yaml?", told(t, filepath.Join(folder, "lines.yaml")))
	assert.Equal(t, ": no such file; check the path", told(t, filepath.Join(folder, "x", "lines.yaml")))
	assert.Equal(t, ": could not be read: not a directory; check the path and the disk", told(t, filepath.Join(path, "x")))
	assert.Equal(t, ":1:1: nothing is written in the file; start from the commented template", told(t, fileWith(t, "a", nil)))
	assert.Equal(t, ":1:1: nothing is written in the file; start from the commented template", told(t, fileWith(t, "a", []byte("# a\n\n"))))
}

func TestForbiddenFile(t *testing.T) {
	if os.Geteuid() == 0 {
		t.Skip("the superuser may read every file")
	}
	path := fileWith(t, "line.yaml", []byte(base))
	require.NoError(t, os.Chmod(path, 0))
	assert.Equal(t, ": may not be read; ask its owner for leave to read it", told(t, path))
}

func TestForbiddenWording(t *testing.T) {
	cause := &os.PathError{Op: "open", Path: "x", Err: os.ErrPermission}
	assert.Equal(t, "x: may not be read; ask its owner for leave to read it", unreadable("x", cause).Error())
}

func TestSizeLimit(t *testing.T) {
	pad := func(size int) []byte {
		return append([]byte(base), bytes.Repeat([]byte("#"), size-len(base))...)
	}
	_, err := Read(fileWith(t, "line.yaml", pad(maxBytes)))
	assert.NoError(t, err)
	const tail = " MB, larger than the 1 MB a line sheet may have; check that it is the right file"
	assert.Equal(t, ": is 1.0"+tail, told(t, fileWith(t, "line.yaml", pad(maxBytes+1))))
	assert.Equal(t, ": is 10.0"+tail, told(t, fileWith(t, "line.yaml", pad(10_000_000))))
	_, err = Parse("t.yaml", pad(maxBytes+1))
	assert.EqualError(t, err, "t.yaml: is 1.0"+tail)
}

// A device tells no size; it must not be read without end.
func TestEndlessFile(t *testing.T) {
	if _, err := os.Stat("/dev/zero"); err != nil {
		t.Skip("no such device here")
	}
	assert.Contains(t, told(t, "/dev/zero"), "larger than the 1 MB")
}

func TestEditorsDiffer(t *testing.T) {
	want := parse(t, base)
	want.Sum = ""
	windows := strings.ReplaceAll(base, "\n", "\r\n")
	for _, text := range []string{"\uFEFF" + base, windows, "\uFEFF" + windows} {
		got := parse(t, text)
		got.Sum = ""
		assert.True(t, assert.ObjectsAreEqual(want, got), "%q reads as another line", text)
	}
	problems := faults(t, []byte("\uFEFF"+strings.ReplaceAll(string(broken(t, "size: DN 25\n", "size: 25\n")), "\n", "\r\n")))
	assert.Equal(t, Pos{17, 15}, Pos{problems[0].Line, problems[0].Col})
	assert.NotContains(t, problems.Error(), "\r")
}

// SHA-256 of "abc" is the one-block example of FIPS 180-4 (recalled); the sheet's own digest is of its text.
func TestSum(t *testing.T) {
	abc := sha256.Sum256([]byte("abc"))
	require.Equal(t, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", hex.EncodeToString(abc[:]))
	want := sha256.Sum256([]byte(base))
	assert.Equal(t, hex.EncodeToString(want[:]), parse(t, base).Sum)
	assert.Equal(t, parse(t, base).Sum, parse(t, "\uFEFF"+base).Sum)
	assert.NotEqual(t, parse(t, base).Sum, parse(t, base+"# seen\n").Sum)
}

func TestOtherEncodings(t *testing.T) {
	assert.Contains(t, faults(t, []byte("\xff\xfel\x00i\x00")).Error(), "t.yaml:1:1: not a text file")
	assert.Contains(t, faults(t, []byte("\x7fELF\x02\x01\x01\x00\x00")).Error(), "t.yaml:1:1: the hidden control character U+007F")
	assert.Contains(t, faults(t, []byte("PK\x03\x04")).Error(), "t.yaml:1:3: the hidden control character U+0003")
}

// Files made to take long must be answered in seconds: the limits keep the work linear.
func TestHostileFiles(t *testing.T) {
	bomb := "a: &a [x,x,x,x,x,x,x,x,x]\n"
	for last, next := range map[string]string{"a": "b", "b": "c", "c": "d", "d": "e", "e": "f", "f": "g"} {
		bomb += next + ": &" + next + " [" + strings.TrimSuffix(strings.Repeat("*"+last+",", 9), ",") + "]\n"
	}
	fill := func(one string) string { return strings.Repeat(one, maxBytes/len(one)) }
	numbered := func(format func(i int) string) string {
		var b strings.Builder
		for i := 0; b.Len() < maxBytes-100; i++ {
			b.WriteString(format(i))
		}
		return b.String()
	}
	for name, text := range map[string]string{
		"aliases":        bomb,
		"open brackets":  fill("["),
		"open braces":    fill("{a: "),
		"dashes":         fill("- "),
		"question marks": fill("? "),
		"unknown keys":   numbered(func(i int) string { return "k" + strings.Repeat("x", i%9) + string(rune('a'+i%26)) + ": 1\n" }),
		"one key":        fill("line: x\n"),
		"names":          "fluids:\n" + numbered(func(i int) string { return "  a" + strings.Repeat("b", i%50) + string(rune('a'+i%26)) + ": {}\n" }),
		"quotes":         fill("\"\n"),
		"comments":       fill("#\n"),
		"comment keys":   fill("a: 1 # b\n"),
		"long scalar":    "line: " + fill("x")[:maxBytes-10],
		"lost parts":     "line: x\nruns:\n  a:\n    parts:\n" + numbered(func(int) string { return "    - {}\n" }),
		"lost runs":      "line: x\nruns:\n" + numbered(func(i int) string { return "  r" + strings.Repeat("a", i%40) + string(rune('a'+i%26)) + ": {to: x}\n" }),
	} {
		t.Run(name, func(t *testing.T) {
			start := time.Now()
			_, err := Parse("t.yaml", []byte(text))
			assert.Error(t, err)
			assert.Less(t, time.Since(start), 10*time.Second)
			assert.Less(t, len(err.Error()), 100_000)
			t.Log(time.Since(start).Round(time.Millisecond))
		})
	}
}
