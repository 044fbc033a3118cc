/**
 * Elements, attributes and text as markup that is well-formed and escaped by construction.
 *
 * <p>Pages and drawings are put together here rather than from a template language: a plan's page
 * is half drawings, both are XML, and one small writer serves both without a build step of its own.
 */
package org.counterpull.markup;
