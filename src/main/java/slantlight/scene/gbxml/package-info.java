/**
 * Rooms from gbXML, the open schema for building geometry (gbxml.org, schema 0.37 and those before
 * it): spaces, the surfaces around them and their openings.
 */
package slantlight.scene.gbxml;
