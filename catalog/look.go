package catalog

import (
	"reflect"
	"sync"
)

// slot holds one decoded entry; its Once lets many callers ask while one decodes.
type slot struct {
	once   sync.Once
	value  any
	err    error
	summed sync.Once
	digest string
}

// Fluid finds a fluid by id, other name, CAS number or UN number. The error is a [*NotFound], an
// [*Ambiguous] or the [Faults] of its file; so it is for the other look-ups.
func (c *Catalog) Fluid(name string) (*Fluid, error) { return look[Fluid](c, Fluids, name) }

// Material finds a material by id or other name.
func (c *Catalog) Material(name string) (*Material, error) {
	return look[Material](c, Materials, name)
}

// Hose finds a hose class by id or other name.
func (c *Catalog) Hose(name string) (*Hose, error) { return look[Hose](c, Hoses, name) }

// Connection finds a connection family by id or other name.
func (c *Catalog) Connection(name string) (*Connection, error) {
	return look[Connection](c, Connections, name)
}

// Seal finds a kind of seal by id or other name.
func (c *Catalog) Seal(name string) (*Seal, error) { return look[Seal](c, Seals, name) }

// Source finds a document by id.
func (c *Catalog) Source(name string) (*Source, error) { return look[Source](c, Sources, name) }

func look[T any](c *Catalog, kind, name string) (*T, error) {
	id, err := c.ID(kind, name)
	if err != nil {
		return nil, err
	}
	s := c.slot(entry{kind, id})
	s.once.Do(func() { s.value, s.err = load[T](c, entry{kind, id}) })
	if s.err != nil {
		return nil, s.err
	}
	return s.value.(*T), nil
}

func (c *Catalog) slot(e entry) *slot {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.loaded[e] == nil {
		c.loaded[e] = &slot{}
	}
	return c.loaded[e]
}

// slotted says whether the entry was asked for before, which only one that is there can be.
func (c *Catalog) slotted(e entry) bool {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.loaded[e] != nil
}

// load decodes the built-in file and lays the site files over it.
func load[T any](c *Catalog, e entry) (*T, error) {
	value := new(T)
	if raw := c.builtIn(e); raw != nil {
		if err := decode(e.path(), raw, value); err != nil {
			return nil, err
		}
	}
	for _, s := range c.site[e] {
		lay(reflect.ValueOf(value).Elem(), s)
	}
	return value, nil
}
