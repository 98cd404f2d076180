# METADATA
# title: The levers or ring of a coupling are not locked
# description: |
#   A lever that catches on clothing or shakes loose opens the coupling under pressure. A pin, clip or
#   turned ring holds it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: joints
#   scope: ["!open_point", needs_locking]
#   needs: [joints.locked]
#   message: "The levers or ring of the coupling at {a} and {b} are not locked"
#   action: >-
#     Pin or clip the levers, or turn the locking ring, before pressure is let in, and vent before they
#     are opened.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.levers_not_locked

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.needs_locking
	j.locked == false
}
