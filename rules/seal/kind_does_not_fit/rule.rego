# METADATA
# title: The kind of seal does not belong in this joint
# description: |
#   Each connection standard takes certain kinds of seal only. A flat washer in an O-ring groove, or a
#   ring on a flat face, is blown out under pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: seals
#   scope: []
#   needs: [seals.kind, seals.kind_fits]
#   message: "A seal of the kind {kind} does not belong in joint {joint}"
#   action: "Fit a kind of seal that the connection standard names."
#   basis:
#     - document: EN 1514-1
#       edition: ""
#       clause: "gasket shapes"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.seal.kind_does_not_fit

report contains {"subject": s.id, "joint": s.joint, "kind": s.kind} if {
	some s in input.seals
	s.kind_fits == false
}
